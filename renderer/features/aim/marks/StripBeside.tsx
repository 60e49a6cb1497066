import { useMemo } from 'react';
import { Exportable } from '../../../export/index.ts';
import { sightStripMarks } from '../../../plots/sightStrip/marks.ts';
import { SightStrip } from '../../../plots/sightStrip/SightStrip.tsx';
import { useUnits } from '../../../state/useBench.ts';
import type { MarksView } from './derive.ts';
import { stripData } from './plots.ts';
import { firstRows, stripSpan } from './useStrip.ts';
import { stripSentence, stripTable } from './stripWords.ts';

/** The sight's strip as it would lie on the bar, and each interval beside it. */
export function StripBeside({ view }: { view: MarksView }) {
  const units = useUnits();
  const rows = useMemo(() => view.strip ?? firstRows(view.picture, stripSpan(view, units)), [view, units]);
  const fit = view.picture.fit?.ok === true ? view.picture.fit.value : null;
  const data = useMemo(() => (fit === null ? null : stripData(view, fit, rows, units)), [view, fit, rows, units]);
  const marks = useMemo(() => (data === null ? null : sightStripMarks(data)), [data]);
  if (data === null || marks === null) return null;
  const sentence = stripSentence(rows, view, units);
  const title = `Strip, ${marks.size}`;
  const note = 'Beside each figure its 95 %; ringed: shot in.';
  return (
    <section>
      <h2 className="plate">{title}</h2>
      <Exportable of="sight strip" title={title} note={note} sentence={sentence} table={() => stripTable(rows, view, units)}>
        <SightStrip data={data} sentence={sentence} />
      </Exportable>
      <p className="note">{note}</p>
    </section>
  );
}
