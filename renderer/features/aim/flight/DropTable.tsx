import type { Band } from '../../../../core/model/band.ts';
import type { UnitChoice } from '../../../../core/model/preferences.ts';
import { showQuantity, textQuantity, unitOf, type Use } from '../../../../core/units/index.ts';
import { useUnits } from '../../../state/useBench.ts';
import type { AimPicture, TableRow } from '../derive.ts';
import { isNought, rangeText } from '../words.ts';

/** Where the arrow is at the usual distances, with the sight left as it is set. The row of the chosen distance stands out. */
export function DropTable({ picture }: { picture: AimPicture }) {
  const units = useUnits();
  const inUnits = (distance: number) => textQuantity(distance, 'distance', units);
  const height = unitOf('drop', units);
  const dashed = picture.rows.some((row) => row.figures === null);
  return (
    <div>
      <table className="table aim-table">
        <caption className="plate">Set for {inUnits(picture.setFor)}, at other distances</caption>
        <thead>
          <tr>
            <th scope="col">distance</th>
            <th scope="col">over the line, {height}</th>
            <th scope="col">band</th>
            <th scope="col">drop, {height}</th>
            <th scope="col">band</th>
            <th scope="col">time, s</th>
            <th scope="col">band</th>
          </tr>
        </thead>
        <tbody>
          {picture.rows.map((row) => (
            <tr key={row.distance} className={row.chosen ? 'answer' : undefined}>
              <th scope="row">{inUnits(row.distance)}</th>
              <Cells row={row} of="height" use="drop" />
              <Cells row={row} of="drop" use="drop" />
              <Cells row={row} of="time" use="time" digits={2} />
            </tr>
          ))}
        </tbody>
      </table>
      <p className="note">
        Drop: below the line the arrow leaves along.
        {dashed &&
          picture.down !== null &&
          ` Dash: down at about ${textQuantity(picture.down, 'distance', units, { digits: 0 })}.`}
      </p>
    </div>
  );
}

/** On the line of sight by the setting itself: there is nothing to be unsure of. */
const onTheLine = ({ low, high }: Band, use: Use, units: UnitChoice) =>
  use === 'drop' && isNought(low, units) && isNought(high, units);

function Cells({ row, of, use, digits }: { row: TableRow; of: 'height' | 'drop' | 'time'; use: Use; digits?: number }) {
  const units = useUnits();
  const band: Band | null = row.figures?.[of] ?? null;
  if (band === null)
    return (
      <>
        <td>–</td>
        <td className="aim-band" />
      </>
    );
  return (
    <>
      <td>{showQuantity(band.value, use, units, { digits: digits ?? 0 }).figure}</td>
      <td className="aim-band">{onTheLine(band, use, units) ? '' : rangeText(band, use, units, digits ?? 0)}</td>
    </>
  );
}
