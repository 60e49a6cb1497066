import type { UnprovenMark } from '../../../../core/aim/index.ts';
import type { Band } from '../../../../core/model/band.ts';
import { countWord } from '../../../../core/model/sentence.ts';
import { Fraction, Mark } from '../../../design/index.ts';
import { dayText } from '../../../../core/findings/index.ts';
import { now } from '../../../state/clock.ts';
import { useBenchApi, useUnits } from '../../../state/useBench.ts';
import { keepFocus } from '../../frame/keepFocus.ts';
import type { MarksView } from './derive.ts';
import { marksHold, putMarkAway, shotInAgain } from './edits.ts';
import { MarkCell } from './MarkCell.tsx';
import { readingsOf } from './readings.ts';
import { changeText, farText, readText } from './words.ts';

/** Marks that hold no more: what is otherwise since, how far each may have moved, and where the new reading is typed. */
export function Unproven({ view }: { view: MarksView }) {
  const units = useUnits();
  const bench = useBenchApi();
  const { unproven } = view.picture;
  const [first] = unproven;
  if (first === undefined) return null;
  const marks = unproven.map(({ mark }) => mark);
  const one = unproven.length === 1;
  const fromMoved = view.picture.from === 'moved';
  /** One figure for a distance: where others hold, theirs is better known than an old one moved. */
  const tryText = (distance: number, moved: number | null): string => {
    const reading = fromMoved ? moved : (readingsOf(view, [distance])[0]?.value ?? null);
    return reading === null ? '–' : readText(reading, view.picture.scale);
  };
  return (
    <section className="marks-unproven">
      <h2 className="plate">
        <Mark level="caution" /> {one ? 'One mark is' : `${capital(countWord(unproven.length))} marks are`} no longer proven
      </h2>
      {lots(unproven, units).map(({ said, since, lot }) => (
        <div key={said}>
          <p className="note">
            <Fraction>{`Since ${since}. ${said}.`}</Fraction>
          </p>
          <table className="table marks-moved" aria-label={`Marks from before ${since}`}>
            <thead>
              <tr>
                <th scope="col">distance</th>
                <th scope="col">read then</th>
                <th scope="col">may have moved by</th>
                <th scope="col">{fromMoved ? 'try' : 'try, by those that hold'}</th>
                <th scope="col">shot in again</th>
                <th scope="col">
                  <span className="heard">Put away</span>
                </th>
              </tr>
            </thead>
            <tbody>
              {lot.map(({ mark, moved }) => {
                const far = farText(mark.distance, units);
                return (
                  <tr key={mark.id}>
                    <th scope="row">{far}</th>
                    <td>{readText(mark.reading, view.picture.scale)}</td>
                    <td>{moved === null ? 'cannot be told' : movedText(moved.moved, view)}</td>
                    <td>{tryText(mark.distance, moved === null ? null : mark.reading + moved.moved.value)}</td>
                    <td className="marks-read">
                      <MarkCell
                        measure="sightReading"
                        name={`What the sight reads now at ${far}`}
                        field={`marks.${mark.id}.again`}
                        value={null}
                        pencil="reads now"
                        onKeep={(value) => value !== null && shotInAgain(bench, mark, value)}
                        onTakeOut={() => putMarkAway(bench, mark, true)}
                      />
                    </td>
                    <td className="marks-more">
                      <button type="button" className="link" onClick={() => void putMarkAway(bench, mark, true).then(keepFocus)}>
                        Put away<span className="heard"> the mark for {far}</span>
                      </button>
                    </td>
                  </tr>
                );
              })}
            </tbody>
          </table>
        </div>
      ))}
      <p className="note">
        Nothing was changed on the bow, and only the notebook was put right?{' '}
        <button type="button" className="link" onClick={() => void marksHold(bench, marks).then(keepFocus)}>
          {one ? 'The mark holds' : 'The marks hold'}
        </button>
      </p>
    </section>
  );
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

function movedText({ value, low, high }: Band, { picture: { scale } }: MarksView): string {
  const signed = (by: number) => {
    const text = readText(by, scale);
    return Number(text.replace('−', '-')) > 0 ? `+${text}` : text.replace(/^−(0(\.0+)?)$/, '$1');
  };
  return `${signed(value)} (${signed(low)} to ${signed(high)})`;
}

/** Marks with the same changes stand together. */
function lots(unproven: readonly UnprovenMark[], units: Parameters<typeof changeText>[1]) {
  const found = new Map<string, UnprovenMark[]>();
  for (const one of unproven) {
    const said = one.changes.map((change) => changeText(change, units, now())).join('; ');
    found.set(said, [...(found.get(said) ?? []), one]);
  }
  return [...found].map(([said, lot]) => ({ said, since: dayText(lot[0]?.mark.context.shotAt ?? now(), now()), lot }));
}
