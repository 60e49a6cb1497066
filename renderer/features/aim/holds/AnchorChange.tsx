import { useMemo } from 'react';
import { anchorMoved, eyeHeightOf } from '../../../../core/aim/index.ts';
import type { Bundle } from '../../../../core/model/bundle.ts';
import { textQuantity, unitOf } from '../../../../core/units/index.ts';
import { Figure } from '../../../design/index.ts';
import { useUnits } from '../../../state/useBench.ts';
import { chooseInAim, useAimChoice } from '../store.ts';
import { depthRange } from '../words.ts';
import { usualDistances, type Aimed } from './derive.ts';
import { about, holdCell } from './words.ts';

interface Props {
  bundle: Bundle;
  aimed: Aimed;
}

/** An anchor so near to the one in use is no other one [m]. */
const ALIKE = 0.005;

/** What another anchor would do: to the point-on distance, and to arrows shot with the hold they have now. */
export function AnchorChange({ bundle, aimed }: Props) {
  const units = useUnits();
  const { otherEye } = useAimChoice(bundle.setup.id);
  const { launches, tipForward, farthest } = aimed;
  const now = launches.value.eyeHeight;
  const usual = usualOther(bundle, now);
  const other = otherEye ?? usual.height;
  const moved = useMemo(() => {
    const distances = usualDistances(units).filter((distance) => distance <= farthest);
    return anchorMoved(launches, tipForward, other, distances);
  }, [launches, tipForward, farthest, other, units]);
  return (
    <section className="holds-anchor">
      <h2 className="plate">Another anchor</h2>
      <div className="aim-at">
        <Figure
          measure="eyeHeight"
          name={`eye above the arrow, instead of ${textQuantity(now, 'setting', units)}`}
          value={otherEye}
          assumed={usual.height}
          onKeep={(value) => chooseInAim(bundle.setup.id, { otherEye: value })}
          field="aim.otherEye"
        />
      </div>
      {moved.ok ? (
        <>
          <p>
            {otherEye === null && `${usual.name}, say. `}
            {moved.value.after.ok
              ? `Point on at ${about(moved.value.after.value, units)}${moved.value.before.ok ? ` instead of ${about(moved.value.before.value, units)}` : ''}.`
              : moved.value.after.problem.sentence}{' '}
            With the same hold the arrows strike {other < now ? 'lower' : 'higher'}:
          </p>
          <MovedTable rows={moved.value.rows} />
        </>
      ) : (
        <p>{moved.problem.sentence}</p>
      )}
      <p className="note">Draw and speed left as they are: another anchor often changes both a little, so shoot it in.</p>
    </section>
  );
}

/** The other of the two usual anchors, while nobody has said which. */
function usualOther({ setup }: Bundle, now: number): { readonly name: string; readonly height: number } {
  const [jaw, cheek] = (['under the jaw', 'side of the face'] as const).map((anchor) => ({
    name: anchor === 'under the jaw' ? 'Under the jaw' : 'At the side of the face',
    height: eyeHeightOf({ eyeHeight: null, anchor }).value,
  })) as [{ name: string; height: number }, { name: string; height: number }];
  const other = setup.form.anchor === 'under the jaw' ? cheek : jaw;
  if (Math.abs(other.height - now) > ALIKE) return other;
  return other === jaw ? cheek : jaw;
}

function MovedTable({
  rows,
}: {
  rows: readonly { readonly distance: number; readonly moved: Parameters<typeof holdCell>[0] }[];
}) {
  const units = useUnits();
  const bands = rows.map(({ moved }) => depthRange(moved, units));
  return (
    <table className="table holds-moved">
      <thead>
        <tr>
          <th scope="row">at</th>
          {rows.map(({ distance }) => (
            <th key={distance} scope="col">
              {textQuantity(distance, 'distance', units)}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        <tr>
          <th scope="row">by, {unitOf('drop', units)}</th>
          {rows.map(({ distance, moved }) => (
            <td key={distance}>{holdCell(moved, units, ['', '']).figure.trim()}</td>
          ))}
        </tr>
        {bands.some((band) => band.includes(' to ')) && (
          <tr>
            <th scope="row">band</th>
            {rows.map(({ distance }, i) => (
              <td key={distance} className="aim-band">
                {bands[i]}
              </td>
            ))}
          </tr>
        )}
      </tbody>
    </table>
  );
}
