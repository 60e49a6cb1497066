import { useMemo } from 'react';
import type { Bundle } from '../../../../core/model/bundle.ts';
import type { Id } from '../../../../core/model/common.ts';
import { MarkLine } from '../../../plots/markLine/MarkLine.tsx';
import { useUnits } from '../../../state/useBench.ts';
import { useFindings } from '../../frame/useFindings.ts';
import type { Head, Part, PartProps } from '../part.ts';
import { PrintButton } from '../print/index.ts';
import type { MarksView } from './derive.ts';
import { Distances } from './Distances.tsx';
import { MarkNotes } from './MarkNotes.tsx';
import { OtherScale } from './OtherScale.tsx';
import { MarksAway } from './MarksAway.tsx';
import { MarksTable } from './MarksTable.tsx';
import { marksMakers } from './papers.ts';
import { lineData } from './plots.ts';
import { SightFigures } from './SightFigures.tsx';
import { setDesk } from './store.ts';
import { StripBeside } from './StripBeside.tsx';
import { Unproven } from './Unproven.tsx';
import { useMarks } from './useMarks.ts';
import { farText, lineNote, lineSentence, marksHead, readAloud, nextText, tableNote } from './words.ts';
import './marks.css';

function useHead({ bundle }: PartProps): Head {
  const units = useUnits();
  return marksHead(useMarks(bundle), units, useBraceFirst());
}

/** Until the brace height is mended nothing is shot, and afterwards no mark holds. */
const useBraceFirst = (): boolean => useFindings().some(({ id, level }) => id === 'braceHeight' && level === 'stop');

function Body({ bundle }: PartProps) {
  const view = useMarks(bundle);
  const setupId = bundle.setup.id;
  // What every reading below rests on comes first.
  const moved = view.picture.from === 'moved';
  return (
    <div className="marks">
      {moved && <Unproven view={view} />}
      <div className="marks-beside">
        <div>
          <OtherScale view={view} />
          <MarksTable bundle={bundle} view={view} />
          <MarkNotes view={view} />
          <Beneath bundle={bundle} view={view} />
        </div>
        <StripBeside view={view} />
      </div>
      {!moved && <Unproven view={view} />}
      <Line view={view} />
      <SightFigures bundle={bundle} />
      <MarksAway setupId={setupId} />
    </div>
  );
}

/** What the table means, which distances it has, what to shoot next, and the papers. */
function Beneath({ bundle, view }: { bundle: Bundle; view: MarksView }) {
  const units = useUnits();
  const setupId = bundle.setup.id;
  const makers = useMemo(() => marksMakers(view, units), [view, units]);
  const said = useBraceFirst() ? null : nextText(view, units);
  const fitted = view.picture.fit?.ok === true;
  return (
    <>
      {fitted && (
        <div className="acts">
          {view.next !== null && said !== null && <AddNext setupId={setupId} distance={view.next.distance} />}
          <PrintButton bundle={bundle} label="Print strip" makers={makers} />
          {said !== null && <p className="note marks-said">{said}</p>}
        </div>
      )}
      <p className="note marks-meaning">{tableNote(view)}</p>
      {fitted && <Distances setupId={setupId} />}
    </>
  );
}

/** Puts the distance that tells most into the first row, where its reading is typed. */
function AddNext({ setupId, distance }: { setupId: Id; distance: number }) {
  const far = farText(distance, useUnits());
  return (
    <button
      type="button"
      className="btn go"
      onClick={() => {
        setDesk(setupId, { distance: far });
        document.querySelector<HTMLElement>('[data-field="marks.next.reading"]')?.focus();
      }}
    >
      Add the {far} mark
    </button>
  );
}

function Line({ view }: { view: MarksView }) {
  const units = useUnits();
  const data = lineData(view, units);
  if (data === null || data.known.length < 2) return null;
  return (
    <MarkLine
      data={data}
      title="Known marks, off the fitted line"
      note={lineNote(view, units)}
      sentence={lineSentence(data)}
      says={(distance) => readAloud(view, distance, units)}
    />
  );
}

/** Where the sight stands at every distance, from the marks that were shot in. */
export const marksPart: Part = { name: 'Sight marks', useHead, Body };
