import { arrowMass } from '../arrow/index.ts';
import { ok, refuse, type Bundle, type Result } from '../model/index.ts';
import { given } from '../model/given.ts';
import type { Band } from '../model/band.ts';
import { CHRONOGRAPH_DOUBT } from './chronograph/speedLine.ts';
import { speedFor } from './speedFor.ts';

export interface ArrowSpeed extends Band {
  /** This arrow over the chronograph, a curve through others that were, or estimated from the bow's kind. */
  readonly from: 'measured' | 'fitted' | 'estimated';
}

/**
 * Launch speed of this arrow from this bow: the chronograph's reading when there is one, else what arrows of other masses did, else an estimate from the bow's kind.
 *
 * @equation v = v_measured (1 ± 1 %), or speedFor at the arrow's mass
 * @param bundle - the set-up with its records [record]
 * @returns v, value with low and high [m/s], and whether it was measured, fitted or estimated [record]
 * @validity the refusal names what is missing; a compound needs the chronograph
 * @source klopsteg-1943
 * @example setupSpeed({ ...exampleBundle, setup: { ...exampleBundle.setup, settings: { ...exampleBundle.setup.settings, arrowSpeed: 55 } } }).value.value // 55
 */
export function setupSpeed(bundle: Bundle): Result<ArrowSpeed> {
  const { arrowSpeed } = bundle.setup.settings;
  if (arrowSpeed !== null) {
    const read = given('the speed', { arrowSpeed });
    if (!read.ok) return read;
    return ok({
      value: arrowSpeed,
      low: arrowSpeed * (1 - CHRONOGRAPH_DOUBT),
      high: arrowSpeed * (1 + CHRONOGRAPH_DOUBT),
      from: 'measured',
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
  return ok({ ...band, from: from === 'chronograph' ? 'measured' : from });
}
