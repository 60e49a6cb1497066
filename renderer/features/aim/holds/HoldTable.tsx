import { useId } from 'react';
import type { HoldRow } from '../../../../core/aim/index.ts';
import type { Band } from '../../../../core/model/band.ts';
import { showQuantity, unitOf, type Use } from '../../../../core/units/index.ts';
import { useUnits } from '../../../state/useBench.ts';
import { rangeText } from '../words.ts';
import { distanceText, same, type HoldLine } from './derive.ts';
import { holdCell } from './words.ts';

interface Props {
  lines: readonly HoldLine[];
  chosen: number;
  onChoose(distance: number): void;
  /** For those who walk down the string. */
  crawls: boolean;
}

/** Points of aim over the usual distances. The row in hand is what the view shows: by a click, or by the arrow keys. */
export function HoldTable({ lines, chosen, onChoose, crawls }: Props) {
  const units = useUnits();
  const name = useId();
  const [height, far] = [unitOf('drop', units), unitOf('distance', units)];
  // Who walks down the string holds the tip on the centre and lays no marker.
  const last = crawls ? 'crawl' : lines.some(({ row }) => row !== null && row.ground !== null) ? 'ground' : null;
  return (
    <table className={last === null ? 'table holds-table few' : 'table holds-table'}>
      <caption className="heard">Points of aim</caption>
      <thead>
        <tr>
          <th scope="col">distance</th>
          <th scope="col">hold the tip, {height}</th>
          <th scope="col">band</th>
          <th scope="col">tip on the centre strikes</th>
          {last !== null && (
            <>
              <th scope="col">{last === 'crawl' ? `crawl, ${unitOf('setting', units)}` : `marker out, ${far}`}</th>
              <th scope="col">band</th>
            </>
          )}
        </tr>
      </thead>
      <tbody>
        {lines.map((line) => (
          <tr
            key={line.distance}
            className={same(line.distance, chosen) ? 'answer' : undefined}
            onClick={() => onChoose(line.distance)}
          >
            <th scope="row">
              <label>
                <input
                  type="radio"
                  className="heard"
                  name={name}
                  checked={same(line.distance, chosen)}
                  onChange={() => onChoose(line.distance)}
                />
                <span className="holds-distance">{distanceText(line, units)}</span>
                {line.pointOn && <span className="name"> point on</span>}
              </label>
            </th>
            {line.row === null ? <NoRow last={last} /> : <Cells row={line.row} last={last} />}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** What else a row holds besides the hold: how it is shot without holding off. */
type Last = 'ground' | 'crawl' | null;

function Cells({ row, last }: { row: HoldRow; last: Last }) {
  const units = useUnits();
  const held = holdCell(row.hold, units, ['above', 'below']);
  return (
    <>
      <td>{held.figure}</td>
      <td className="aim-band">{held.band}</td>
      <td>{row.over === null ? 'short' : holdCell(row.over, units, ['over', 'under']).figure}</td>
      {last === 'ground' && <BandCells band={row.ground} use="distance" digits={1} none="" />}
      {last === 'crawl' && <BandCells band={row.crawl} use="setting" digits={units.setting === 'mm' ? 0 : 2} none="–" />}
    </>
  );
}

function BandCells({ band, use, digits, none }: { band: Band | null; use: Use; digits: number; none: string }) {
  const units = useUnits();
  return (
    <>
      <td>{band === null ? none : showQuantity(band.value, use, units, { digits }).figure}</td>
      <td className="aim-band">{band === null ? '' : rangeText(band, use, units, digits)}</td>
    </>
  );
}

const NoRow = ({ last }: { last: Last }) => (
  <>
    {Array.from({ length: last === null ? 3 : 5 }, (_, i) => (
      <td key={i}>–</td>
    ))}
  </>
);
