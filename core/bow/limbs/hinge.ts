import { Matrix, solve } from 'ml-matrix';
import { ok, refuse, type Result } from '../../model/problem.ts';
import { drawnTo, type Braced, type DrawnTo } from './braced.ts';
import { heldAt } from './heldAt.ts';
import type { LimbBow } from './limbBow.ts';

/** The hinge as a spring: what the limb's bending comes to in this model. */
export interface Hinge {
  /** M(θ), the moment that holds the string [N m]. */
  readonly moment: (theta: number) => number;
  /** ∫ M dθ from full draw [J]; less than nought below it. */
  readonly energy: (theta: number) => number;
  readonly atDraw: DrawnTo;
  /** The greatest miss of the static curve, as a share of the force at full draw [-]. */
  readonly staticError: number;
}

const POINTS = 48;
/** Just off the brace the moment rises as the root of θ, which no polynomial can do: the fit begins a tenth of the stroke beyond it. */
const FROM = 0.1;
/** A curve that the hinge misses by more than this is not this bow's. */
const WORST = 0.08;

const polynomial = ([a, b, c, d]: readonly [number, number, number, number], top: number, atDraw: DrawnTo) => {
  const { theta: full } = atDraw;
  return {
    moment: (theta: number) => {
      const z = theta - full;
      return top + z * (a + z * (b + z * (c + z * d)));
    },
    energy: (theta: number) => {
      const z = theta - full;
      return z * (top + z * (a / 2 + z * (b / 3 + z * (c / 4 + (z * d) / 5))));
    },
  };
};

/**
 * The hinge whose static curve is the given force-draw curve.
 *
 * @equation M(θ) = M_D + Σ a_j (θ − θ_D)^j, j = 1 to 4, by least squares even in θ over T × lever from a tenth of the stroke on; exact at full draw
 * @param bow - the bow as the model sees it [record]
 * @param braced - the same bow at rest, from `bracedOf` [record]
 * @returns moment and energy as functions of θ, the bow at full draw, and how nearly the static curve comes back [record]
 * @validity refused when the curve misses by more than 8 % of the full-draw force, and wherever the bow cannot be drawn; usual curves come back within .5 %
 * @source own derivation
 * @example hingeOf(exampleLimbBow, bracedOf(exampleLimbBow).value).value.staticError < 0.0055 // true
 */
export function hingeOf(bow: LimbBow, braced: Braced): Result<Hinge> {
  const stroke = bow.draw - bow.brace;
  const held = drawnTo(bow, braced, bow.draw);
  if (!held.ok) return held;
  const atDraw = held.value;
  const range = atDraw.theta - braced.theta;
  const places: DrawnTo[] = [];
  for (let i = 0; i < POINTS; i++) {
    const place = drawnTo(bow, braced, bow.brace + stroke * (FROM + ((1 - FROM) * i) / POINTS));
    if (!place.ok) return place;
    const { theta } = place.value;
    if (!(range > 1e-3 && theta > (places.at(-1)?.theta ?? braced.theta) && theta < atDraw.theta))
      return refuse(
        'limbs do not bend',
        'The limbs were expected to bend further all along the draw. Read the force-draw curve again.',
      );
    places.push(place.value);
  }

  const normal = Matrix.zeros(4, 4);
  const right = Matrix.zeros(4, 1);
  for (const [i, place] of places.entries()) {
    // Each counts for the stretch of θ that it stands for: even in θ, however the places crowd.
    const width = ((places[i + 1] ?? atDraw).theta - (places[i - 1] ?? place).theta) / 2;
    const z = (place.theta - atDraw.theta) / range;
    const powers = [z, z * z, z * z * z, z * z * z * z];
    powers.forEach((p, row) => {
      powers.forEach((q, column) => normal.set(row, column, normal.get(row, column) + width * p * q));
      right.set(row, 0, right.get(row, 0) + width * p * (place.moment - atDraw.moment));
    });
  }
  const [a = 0, b = 0, c = 0, d = 0] = solve(normal, right).to1DArray();
  const spring = polynomial([a / range, b / range ** 2, c / range ** 3, d / range ** 4], atDraw.moment, atDraw);
  const staticError = missOf(bow, braced, spring.moment, atDraw.theta);
  if (!(staticError <= WORST))
    return refuse(
      'no such limbs',
      'No limbs of this model have this force-draw curve. Read the curve again, most of all near the brace height.',
    );
  return ok({ ...spring, atDraw, staticError });
}

/** Draws the bow with its fitted hinge from full draw back to the brace height and compares the force with the one that was given. */
function missOf(bow: LimbBow, braced: Braced, moment: Hinge['moment'], full: number): number {
  let theta = full;
  let worst = 0;
  for (let i = POINTS; i >= 0; i--) {
    const u = bow.brace + ((bow.draw - bow.brace) * i) / POINTS;
    const held = heldAt(bow, braced, moment, u, theta);
    theta = held.theta;
    const miss = Math.abs(held.force - bow.force(u));
    if (!(miss <= worst)) worst = miss;
  }
  return worst / bow.force(bow.draw);
}
