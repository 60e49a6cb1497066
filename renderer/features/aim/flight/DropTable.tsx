import { Fragment } from 'react';
import type { Band } from '../../../../core/model/band.ts';
import type { UnitChoice } from '../../../../core/model/preferences.ts';
import { showQuantity, textQuantity, unitOf } from '../../../../core/units/index.ts';
import { Exportable } from '../../../export/index.ts';
import { useUnits } from '../../../state/useBench.ts';
import type { AimPicture, TableRow } from '../derive.ts';
import { isNought, rangeText } from '../words.ts';
import { dropColumns, dropCsv, type DropColumn } from './dropTable.ts';

/** Where the arrow is at the usual distances, with the sight left as it is set. The row of the chosen distance stands out. */
export function DropTable({ picture }: { picture: AimPicture }) {
  const units = useUnits();
  const inUnits = (distance: number) => textQuantity(distance, 'distance', units);
  const columns = dropColumns(units);
  const dashed = picture.rows.some((row) => row.figures === null);
  const title = `Set for ${inUnits(picture.setFor)}, at other distances`;
  const note =
    'Drop: below the line the arrow leaves along.' +
    (dashed && picture.down !== null
      ? ` Dash: down at about ${textQuantity(picture.down, 'distance', units, { digits: 0 })}.`
      : '');
  return (
    <section className="flight-table">
      <h2 className="plate">{title}</h2>
      <Exportable
        of="drop"
        title={title}
        note={note}
        sentence={`${title}. ${note}`}
        table={() => dropCsv(picture.rows, units)}
        beneath={<p className="note">{note}</p>}
      >
        <table className="table" aria-label={title}>
          <thead>
            <tr>
              <th scope="col" data-export-text="">
                distance
              </th>
              {columns.map(({ of, name, use }) => (
                <Fragment key={of}>
                  <th scope="col" data-export-text="">
                    {name}, {unitOf(use, units)}
                  </th>
                  <th scope="col" className="flight-band-head" data-export-text="">
                    band
                  </th>
                </Fragment>
              ))}
            </tr>
          </thead>
          <tbody>
            {picture.rows.map((row) => (
              <tr key={row.distance} className={row.chosen ? 'answer' : undefined}>
                <th scope="row" data-export-text="">
                  {inUnits(row.distance)}
                </th>
                {columns.map((column) => (
                  <Cells key={column.of} row={row} column={column} />
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </Exportable>
    </section>
  );
}

/** On the line of sight by the setting itself: there is nothing to be unsure of. */
const onTheLine = ({ low, high }: Band, { of }: DropColumn, units: UnitChoice) =>
  of === 'height' && isNought(low, units) && isNought(high, units);

function Cells({ row, column }: { row: TableRow; column: DropColumn }) {
  const units = useUnits();
  const { of, use, digits } = column;
  const band: Band | null = row.figures?.[of] ?? null;
  return (
    <>
      <td data-export-text="">{band === null ? '–' : showQuantity(band.value, use, units, { digits }).figure}</td>
      <td className="flight-band-cell" data-export-text="">
        {band === null || onTheLine(band, column, units) ? '' : rangeText(band, use, units, digits)}
      </td>
    </>
  );
}
