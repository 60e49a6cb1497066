import { arrowMass } from '../arrow/index.ts';
import { ok, refuse, type Bundle, type Result } from '../model/index.ts';
import { given } from '../model/given.ts';
import type { Band } from '../model/band.ts';
import { carriedSpeed } from './carriedSpeed.ts';
import { sinceTimed, type SinceTimed } from './chronograph/sinceTimed.ts';
import { CHRONOGRAPH_DOUBT } from './chronograph/speedLine.ts';
import { speedFor } from './speedFor.ts';

/** A speed that was measured, and what of arrow and brace height is otherwise since. */
export interface Carried extends SinceTimed {
  readonly speed: number;
}

export interface ArrowSpeed extends Band {
  /** This arrow over the chronograph; its reading of before arrow or brace height were altered, carried over; a curve through others; or estimated from the bow's kind. */
  readonly from: 'measured' | 'carried' | 'fitted' | 'estimated';
  /** What was measured and what is otherwise since; null for a speed that was not carried over. */
  readonly carried: Carried | null;
}

/**
 * Launch speed of this arrow from this bow: the chronograph's reading when there is one, carried over where arrow or brace height were altered since, else what arrows of other masses did, else an estimate from the bow's kind.
 *
 * @equation v = v_measured (1 ± 1 %), or carriedSpeed where sinceTimed tells of another arrow or brace height, or speedFor at the arrow's mass
 * @param bundle - the set-up with its records [record]
 * @returns v, value with low and high [m/s], and whether it was measured, carried over, fitted or estimated [record]
 * @validity the refusal names what is missing; a compound needs the chronograph
 * @source klopsteg-1943
 * @example setupSpeed({ ...exampleBundle, setup: { ...exampleBundle.setup, settings: { ...exampleBundle.setup.settings, arrowSpeed: 55 } } }).value.value // 55
 */
export function setupSpeed(bundle: Bundle): Result<ArrowSpeed> {
  const { arrowSpeed } = bundle.setup.settings;
  if (arrowSpeed !== null) {
    const read = given('the speed', { arrowSpeed });
    if (!read.ok) return read;
    const since = sinceTimed(bundle);
    if (since !== null)
      return ok({
        ...carriedSpeed(bundle, arrowSpeed, since),
        from: 'carried',
        carried: { speed: arrowSpeed, ...since },
      });
    return ok({
      value: arrowSpeed,
      low: arrowSpeed * (1 - CHRONOGRAPH_DOUBT),
      high: arrowSpeed * (1 + CHRONOGRAPH_DOUBT),
      from: 'measured',
      carried: null,
    });
  }
  const arrow = arrowMass(bundle.arrowSet);
  if (!arrow.ok) return arrow;
  const speed = speedFor(bundle, arrow.value.mass);
  if (!speed.ok) {
    // One reading over the chronograph is all that is wanted of it; its curve would not tell the speed.
    return bundle.bow.bowKind === 'compound'
      ? refuse(
          'compound',
          'The speed of a compound is not estimated: it depends on its cams. Measure it with a chronograph.',
          'arrowSpeed',
        )
      : speed;
  }
  const { from, ...band } = speed.value;
  return ok({ ...band, from: from === 'chronograph' ? 'measured' : from, carried: null });
}
