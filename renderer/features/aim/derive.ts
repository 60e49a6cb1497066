import {
  atCorners,
  comesDown,
  flightBasis,
  launchBand,
  setSight,
  standingEye,
  type AimPlan,
  type Corners,
  type DropRow,
  type FlightBasis,
  type SetSight,
} from '../../../core/aim/index.ts';
import type { Bundle } from '../../../core/model/bundle.ts';
import type { UnitChoice } from '../../../core/model/preferences.ts';
import { ok, type Result } from '../../../core/model/problem.ts';
import { farEndFor, tableDistances } from './distances.ts';
import { withoutSight, type WithoutSight } from './holds/holds.ts';
import { planOn, setForOf, targetDrop } from './plan.ts';
import type { FlownChoice } from './store.ts';

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
  readonly basis: FlightBasis;
  readonly plan: AimPlan;
  readonly sights: Corners<SetSight>;
  readonly setFor: number;
  /** Where the arrow meets level ground, the eye standing 1.6 m over it; null when it was not flown so far. */
  readonly down: number | null;
  readonly rows: readonly TableRow[];
  readonly withoutSight: WithoutSight;
}

/** Flight, table and point-on distance of a set-up, for the chosen distance; or what is missing. */
export function aimPicture(bundle: Bundle, choice: FlownChoice, units: UnitChoice): Result<AimPicture> {
  const basis = flightBasis(bundle, choice.air);
  if (!basis.ok) return basis;
  const { speed, eyeHeight, drag } = basis.value;
  const begin = setForOf(bundle, choice, units) as number;
  const planned = planOn(bundle, basis.value, begin, tableDistances(units, begin));
  if (!planned.ok) return planned;

  const far = Math.max(LEAST_FLOWN, farEndFor(begin, units));
  const sights = atCorners(launchBand(speed, drag, eyeHeight.value, targetDrop), (launch) => setSight(launch, begin, far));
  if (!sights.ok) return sights;
  const down = comesDown(sights.value.value, standingEye);
  const rows = planned.value.table.map((row) => ({
    distance: row.distance,
    chosen: row.distance === begin,
    figures: down !== null && row.distance > down ? null : row,
  }));
  return ok({
    basis: basis.value,
    plan: planned.value,
    sights: sights.value,
    setFor: begin,
    down,
    rows,
    withoutSight: withoutSight(bundle, planned.value),
  });
}
