import { ok, refuse, type Result } from '../../model/problem.ts';
import type { Braced } from './braced.ts';
import type { Hinge } from './hinge.ts';
import type { LimbBow } from './limbBow.ts';
import { exitOf } from './runStroke.ts';

/** Limb masses at the tip that a bow can have [kg]: from a child's bow to a heavy stave. */
const LEAST = 0.004;
const MOST = 0.16;
/** Coarse steps are enough to look for it by. */
const LOOKING = 1e-5;
const NEAR = 5e-4;
const MOST_RUNS = 8;

/**
 * The limb mass with which the model's arrow leaves at a given speed.
 *
 * @equation v(m_t) = v, by the secant rule in 1/v²
 * @param bow - the bow as the model sees it, its tip mass to begin with [record]
 * @param braced - the string on it, and the arm at rest [record]
 * @param hinge - its hinges, which no limb mass alters [record]
 * @param speed - v [m/s]
 * @returns m_t [kg]
 * @validity refused when no limb mass from 4 to 160 g gives this speed
 * @source own derivation
 * @example Math.abs(tipMassFor({ ...exampleLimbBow, tipMass: 0.05 }, bracedOf(exampleLimbBow).value, hingeOf(exampleLimbBow, bracedOf(exampleLimbBow).value).value, 59.25).value - 0.035) < 0.0005 // true
 */
export function tipMassFor(bow: LimbBow, braced: Braced, hinge: Hinge, speed: number): Result<number> {
  /** Slowness grows nearly in line with the mass that has to be moved. */
  const miss = (tipMass: number): number | null => {
    const run = exitOf({ ...bow, tipMass }, braced, hinge, LOOKING);
    return run.ok ? (speed / run.value.exit.speed) ** 2 - 1 : null;
  };
  let [before, missBefore] = [bow.tipMass, miss(bow.tipMass)];
  let now = missBefore === null ? before : within(before * (missBefore > 0 ? 0.8 : 1.25));
  for (let run = 1; run < MOST_RUNS && missBefore !== null; run++) {
    if (Math.abs(missBefore) < NEAR) return ok(before);
    const missNow = miss(now);
    if (missNow === null || missNow === missBefore) break;
    const next = within(now - (missNow * (now - before)) / (missNow - missBefore));
    [before, missBefore] = [now, missNow];
    now = next;
  }
  return refuse('no such limbs', 'No limbs of this model leave the arrow at this speed.');
}

const within = (tipMass: number): number => Math.min(MOST, Math.max(LEAST, tipMass));
