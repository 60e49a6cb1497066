import { useState } from 'react';
import type { Point } from '../../../../core/group/index.ts';
import type { UnitChoice } from '../../../../core/model/preferences.ts';
import { showQuantity } from '../../../../core/units/index.ts';

interface Props {
  holes: readonly { readonly id: number; readonly place: Point; readonly arrow: number | null; readonly name: string }[];
  units: UnitChoice;
  onNumber(id: number, arrow: number | null): void;
  onTake(id: number): void;
}

/** What was read so far. */
export function HoleList({ holes, units, onNumber, onTake }: Props) {
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
          {holes.map(({ id, place, arrow, name }) => (
            <tr key={id}>
              <th scope="row">
                <HoleNumber name={name} arrow={arrow} onKeep={(number) => onNumber(id, number)} />
              </th>
              <td>{figure(place.x)}</td>
              <td>{figure(place.y)}</td>
              <td>
                <button type="button" className="link" onClick={() => onTake(id)}>
                  Take out<span className="heard"> {name}</span>
                </button>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

/** The number on the arrow, typed; emptied, it has none. */
function HoleNumber({ name, arrow, onKeep }: { name: string; arrow: number | null; onKeep(arrow: number | null): void }) {
  const [draft, setDraft] = useState<string | null>(null);
  const shown = arrow === null ? '' : String(arrow);
  const keep = () => {
    const typed = draft?.trim() ?? shown;
    setDraft(null);
    if (typed !== shown && /^(?:[1-9]\d{0,2})?$/.test(typed)) onKeep(typed === '' ? null : Number(typed));
  };
  return (
    <input
      className="words hole-number"
      aria-label={`arrow’s number, ${name}`}
      inputMode="numeric"
      value={draft ?? shown}
      placeholder="–"
      maxLength={3}
      autoComplete="off"
      onChange={(event) => setDraft(event.currentTarget.value)}
      onBlur={keep}
      onKeyDown={(event) => {
        if (event.key === 'Enter') keep();
        if (event.key === 'Escape' && draft !== null) {
          event.stopPropagation();
          setDraft(null);
        }
      }}
    />
  );
}
