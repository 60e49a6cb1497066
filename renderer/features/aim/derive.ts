import {
  atCorners,
  launchBand,
  setSight,
  type AimPlan,
  type Corners,
  type DropRow,
  type SetSight,
} from '../../../core/aim/index.ts';
import type { ArrowSpeed } from '../../../core/bow/index.ts';
import type { Band } from '../../../core/model/band.ts';
import type { Bundle } from '../../../core/model/bundle.ts';
import type { UnitChoice } from '../../../core/model/preferences.ts';
import { ok, type Result } from '../../../core/model/problem.ts';
import { factorOf } from '../../../core/units/index.ts';
import type { Assumable } from './assumed.ts';
import { aimBasis, goldAboveGround, planOn, setForOf, targetDrop } from './basis.ts';
import { farEndFor, tableDistances } from './distances.ts';
import type { AimChoice } from './store.ts';
import { withoutSight, type WithoutSight } from './holds.ts';

/** Flown at least this far, so that the axis can stand still while the target is moved nearer [m]. */
const LEAST_FLOWN = 200;

export interface TableRow {
  readonly distance: number;
  readonly chosen: boolean;
  /** Null where the arrow has come down before. */
  readonly figures: DropRow | null;
}

/** Everything the Aim screen shows. */
export interface AimPicture {
  readonly speed: ArrowSpeed;
  readonly mass: number;
  readonly diameter: Band & Assumable;
  readonly eyeHeight: Assumable;
  readonly air: number;
  readonly plan: AimPlan;
  readonly sights: Corners<SetSight>;
  readonly setFor: number;
  /** Where the arrow meets the ground, the gold standing 1.30 m over it; null when that is past the axis. */
  readonly down: number | null;
  readonly rows: readonly TableRow[];
  readonly withoutSight: WithoutSight;
}

/** Flight, table and points of aim of a set-up, for the chosen distances; or what is missing. */
export function aimPicture(bundle: Bundle, choice: AimChoice, units: UnitChoice): Result<AimPicture> {
  const basis = aimBasis(bundle);
  if (!basis.ok) return basis;
  const { speed, mass, diameter, eyeHeight, air, drag } = basis.value;
  const begin = setForOf(bundle, choice, units) as number;
  const aimAt = choice.aimAt ?? (units.distance === 'm' ? 30 : 30 * factorOf('distance', units));
  const planned = planOn(bundle, basis.value, begin, tableDistances(units, begin), aimAt);
  if (!planned.ok) return planned;

  const far = Math.max(LEAST_FLOWN, farEndFor(begin, units));
  const sights = atCorners(launchBand(speed, drag, eyeHeight.value, targetDrop), (launch) => setSight(launch, begin, far));
  if (!sights.ok) return sights;
  const rows = planned.value.table.map((row) => ({
    distance: row.distance,
    chosen: row.distance === begin,
    figures: row.distance > begin && row.height.value < -goldAboveGround ? null : row,
  }));
  return ok({
    speed,
    mass,
    diameter,
    eyeHeight,
    air,
    plan: planned.value,
    sights: sights.value,
    setFor: begin,
    down: comesDown(sights.value, begin, far),
    rows,
    withoutSight: withoutSight(bundle, planned.value, aimAt),
  });
}

/** Where the value to go by comes down to the ground, to 5 cm. */
function comesDown({ value }: Corners<SetSight>, setFor: number, far: number): number | null {
  let [above, below] = [setFor, far];
  const under = (x: number) => (value.heightOverLine(x) ?? -Infinity) < -goldAboveGround;
  if (!under(below)) return null;
  while (below - above > 0.05) {
    const middle = (above + below) / 2;
    if (under(middle)) below = middle;
    else above = middle;
  }
  return below;
}
