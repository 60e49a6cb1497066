import { useState } from 'react';
import type { Bundle } from '../../../../core/model/bundle.ts';
import type { Id } from '../../../../core/model/common.ts';
import type { UnitChoice } from '../../../../core/model/preferences.ts';
import { factorOf, showQuantity, unitOf } from '../../../../core/units/index.ts';
import { useBenchApi, useUnits } from '../../../state/useBench.ts';
import type { MarkRow, MarksView } from './derive.ts';
import { correctMark, putMarkAway, shotInAgain } from './edits.ts';
import { MarkCell } from './MarkCell.tsx';
import { MarkDetails } from './MarkDetails.tsx';
import { NextMark } from './NextMark.tsx';
import { farText, halfText, readText, verdictText } from './words.ts';

/** Every distance with its reading and how sure it is; the known ones are fields. The next mark is typed in the first row. */
export function MarksTable({ bundle, view }: { bundle: Bundle; view: MarksView }) {
  const units = useUnits();
  const [asked, setAsked] = useState<Id | null>(null);
  const { rows } = view;
  const open = rows.find(({ mark }) => mark !== null && mark.id === asked)?.mark ?? null;
  return (
    <>
      <table className="table marks-table" aria-label="Sight marks">
        <thead>
          <tr>
            <th scope="col">distance</th>
            <th scope="col">shot in</th>
            <th scope="col">mark</th>
            <th scope="col">95 %</th>
            <th scope="col">on the face, {unitOf('drop', units)}</th>
            <th scope="col" colSpan={2} className="marks-verdict">
              beside the others
            </th>
          </tr>
        </thead>
        <tbody>
          <NextMark setupId={bundle.setup.id} view={view} />
          {rows.map((row, i) => (
            <Row
              key={row.mark?.id ?? `${row.distance}`}
              row={row}
              again={rows[i - 1]?.distance === row.distance}
              view={view}
              onDetails={setAsked}
            />
          ))}
        </tbody>
      </table>
      {open !== null && <MarkDetails mark={open} onClose={() => setAsked(null)} />}
    </>
  );
}

/** In line with the others: one decimal below ten. */
const faceText = (height: number, units: UnitChoice): string =>
  showQuantity(height, 'drop', units, { digits: height < 10 * factorOf('drop', units) ? 1 : 0 }).figure;

interface RowProps {
  row: MarkRow;
  /** The row above is for the same distance. */
  again: boolean;
  view: MarksView;
  onDetails(id: Id): void;
}

function Row({ row, again, view: { picture }, onDetails }: RowProps) {
  const units = useUnits();
  const bench = useBenchApi();
  const { distance, reading, bar, weak, onFace, mark, judged } = row;
  const far = farText(distance, units);
  const known = mark !== null && mark.leftOut === null;
  const off = mark === null && bar !== 'on';
  const wrong = judged !== null && ['does not fit', 'one of these'].includes(judged.verdict) && known;
  const classes = [known ? 'answer' : '', weak ? 'marks-weak' : '', mark !== null && !known ? 'marks-out' : ''];
  return (
    <tr className={classes.filter(Boolean).join(' ') || undefined}>
      <th scope="row">
        {mark === null ? (
          far
        ) : (
          <MarkCell
            measure="shootingDistance"
            name={`Distance of the mark for ${far}`}
            field={`marks.${mark.id}.distance`}
            value={mark.distance}
            required
            onKeep={(value) => value !== null && correctMark(bench, mark, 'Distance', { distance: value })}
            onTakeOut={() => putMarkAway(bench, mark, true)}
          />
        )}
      </th>
      <td className="marks-read">
        {mark !== null && (
          <MarkCell
            measure="sightReading"
            name={`What the sight reads at ${far}`}
            field={`marks.${mark.id}.reading`}
            value={mark.reading}
            required
            onKeep={(value) => value !== null && shotInAgain(bench, mark, value)}
            onTakeOut={() => putMarkAway(bench, mark, true)}
          />
        )}
      </td>
      {again || reading === null ? (
        <td colSpan={3}>{again ? '' : picture.fit?.ok === true ? 'out of reach' : ''}</td>
      ) : (
        <>
          <td>{readText(reading.value, picture.scale)}</td>
          <td className="marks-half">{halfText(reading, picture.scale)}</td>
          <td className="marks-half">{onFace === null ? '' : `± ${faceText(onFace, units)}`}</td>
        </>
      )}
      <td className={wrong || off ? 'marks-verdict caution-text' : 'marks-verdict'}>{verdictText(row)}</td>
      <td className="marks-more">
        {mark !== null && (
          <button type="button" className="link" aria-haspopup="dialog" onClick={() => onDetails(mark.id)}>
            Details<span className="heard"> of the mark for {far}</span>
          </button>
        )}
      </td>
    </tr>
  );
}
