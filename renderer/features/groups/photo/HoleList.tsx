import type { Point } from '../../../../core/group/index.ts';
import type { UnitChoice } from '../../../../core/model/preferences.ts';
import { showQuantity } from '../../../../core/units/index.ts';

interface Props {
  holes: readonly { readonly id: number; readonly place: Point; readonly arrow: number | null }[];
  units: UnitChoice;
  onTake(id: number): void;
}

/** What was read so far. */
export function HoleList({ holes, units, onTake }: Props) {
  if (holes.length === 0) return null;
  const figure = (value: number) => showQuantity(value, 'setting', units, { signed: true }).figure;
  return (
    <div className="photo-holes" role="region" aria-label="Holes read" tabIndex={0}>
      <table className="table">
        <thead>
          <tr>
            <th scope="col">arrow</th>
            <th scope="col">across, {units.setting}</th>
            <th scope="col">up, {units.setting}</th>
            <td />
          </tr>
        </thead>
        <tbody>
          {holes.map(({ id, place, arrow }) => (
            <tr key={id}>
              <th scope="row">{arrow}</th>
              <td>{figure(place.x)}</td>
              <td>{figure(place.y)}</td>
              <td>
                <button type="button" className="link" onClick={() => onTake(id)}>
                  Take out<span className="heard"> arrow {arrow}</span>
                </button>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
