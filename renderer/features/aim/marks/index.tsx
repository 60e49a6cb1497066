import type { Bundle } from '../../../../core/model/bundle.ts';
import { MarkLine } from '../../../plots/markLine/MarkLine.tsx';
import { useUnits } from '../../../state/useBench.ts';
import type { Head, Part, PartProps } from '../part.ts';
import type { MarksView } from './derive.ts';
import { Distances } from './Distances.tsx';
import { MarkNotes } from './MarkNotes.tsx';
import { MarksAway } from './MarksAway.tsx';
import { MarksTable } from './MarksTable.tsx';
import { lineData } from './plots.ts';
import { SightFigures } from './SightFigures.tsx';
import { setDesk } from './store.ts';
import { StripBeside } from './StripBeside.tsx';
import { Unproven } from './Unproven.tsx';
import { useMarks } from './useMarks.ts';
import { farText, lineNote, lineSentence, marksHead, nextText, tableNote } from './words.ts';
import './marks.css';

function useHead({ bundle }: PartProps): Head {
  const units = useUnits();
  return marksHead(useMarks(bundle), units);
}

function Body({ bundle }: PartProps) {
  const view = useMarks(bundle);
  const setupId = bundle.setup.id;
  return (
    <div className="marks">
      <div className="marks-beside">
        <div>
          <MarksTable bundle={bundle} view={view} />
          <MarkNotes view={view} />
          <Beneath bundle={bundle} view={view} />
        </div>
        <StripBeside view={view} />
      </div>
      <Unproven view={view} />
      <Line view={view} />
      <SightFigures bundle={bundle} />
      <MarksAway setupId={setupId} />
    </div>
  );
}

/** What the table means, which distances it has, and what to shoot next. */
function Beneath({ bundle, view }: { bundle: Bundle; view: MarksView }) {
  const units = useUnits();
  const setupId = bundle.setup.id;
  const { next } = view;
  const said = nextText(view, units);
  return (
    <>
      <p className="note marks-meaning">{tableNote(view)}</p>
      {view.picture.fit?.ok === true && <Distances setupId={setupId} />}
      {next !== null && said !== null && (
        <div className="acts">
          {next.worstThen < next.worstNow && (
            <button
              type="button"
              className="btn go"
              onClick={() => {
                setDesk(setupId, { distance: farText(next.distance, units) });
                document.querySelector<HTMLElement>('[data-field="marks.next.reading"]')?.focus();
              }}
            >
              Add the {farText(next.distance, units)} mark
            </button>
          )}
          <p className="note marks-said">{said}</p>
        </div>
      )}
    </>
  );
}

function Line({ view }: { view: MarksView }) {
  const units = useUnits();
  const data = lineData(view, units);
  if (data === null || data.known.length < 2) return null;
  return (
    <MarkLine data={data} title="Known marks, off the fitted line" note={lineNote(view, units)} sentence={lineSentence(data)} />
  );
}

/** Where the sight stands at every distance, from the marks that were shot in. */
export const marksPart: Part = { name: 'Sight marks', useHead, Body };
