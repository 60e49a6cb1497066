import { limits, ok, refuse, type ArrowSet, type Result } from '../model/index.ts';
import { given } from '../model/given.ts';
import { tubeShaft, type TubeParts } from './tube.ts';

/** What an arrow weighs, whole or in parts. */
export type ArrowParts = TubeParts &
  Pick<
    ArrowSet,
    'length' | 'linearDensity' | 'pointMass' | 'insertMass' | 'nockMass' | 'fletchingMass' | 'pinMass' | 'wrapMass' | 'weighed'
  >;

/** The small parts that count as nothing while they are not filled in: a bare figure would be a guess, and they are light. */
export type SmallPart = 'insertMass' | 'nockMass' | 'fletchingMass';
/** Most arrows have no pin and no wrap: a blank is taken at its word. */
type RarePart = 'pinMass' | 'wrapMass';
type LightParts = Pick<ArrowParts, SmallPart | RarePart>;

const smallParts: readonly SmallPart[] = ['insertMass', 'nockMass', 'fletchingMass'];

export interface ArrowMass {
  readonly mass: number;
  readonly from: 'weighed' | 'parts';
  readonly assumedZero: readonly SmallPart[];
}

export interface ShaftMass {
  readonly mass: number;
  readonly from: 'mass per length' | 'tube' | 'weighed less its parts';
  readonly assumedZero: readonly SmallPart[];
}

const small = (parts: LightParts): Result<{ sum: number; assumedZero: SmallPart[] }> => {
  const assumedZero = smallParts.filter((part) => parts[part] === null);
  const figures = {
    insertMass: parts.insertMass ?? 0,
    nockMass: parts.nockMass ?? 0,
    fletchingMass: parts.fletchingMass ?? 0,
    pinMass: parts.pinMass ?? 0,
    wrapMass: parts.wrapMass ?? 0,
  };
  const believable = given('the mass of the arrow', figures);
  return believable.ok ? ok({ sum: Object.values(figures).reduce((sum, mass) => sum + mass, 0), assumedZero }) : believable;
};

/** Mass per length as it was entered, else as the tube's geometry makes it; null when neither is on record. */
const densityOf = (parts: ArrowParts): Result<{ value: number; from: 'mass per length' | 'tube' } | null> => {
  if (parts.linearDensity !== null) return ok({ value: parts.linearDensity, from: 'mass per length' });
  const tube = tubeShaft(parts);
  if (!tube.ok) return tube;
  return ok(tube.value === null ? null : { value: tube.value.linearDensity, from: 'tube' });
};

/**
 * Mass of an arrow: the weighed figure when there is one, else the sum of its parts.
 *
 * @equation m = m_weighed, or m = λ L + m_point + m_insert + m_nock + m_fletching + m_pin + m_wrap
 * @param parts - length [m], mass per length [kg/m] or a metal tube's diameter and wall [m], and the masses of parts and whole [kg] of an arrow set [record]
 * @returns m [kg], whether it was weighed or summed, and the small parts that counted as nothing [record]
 * @validity without a weighed figure the shaft's mass per length (or the tube), length and point are needed: the refusal names what is missing; figures outside the model's limits are refused; a pin or wrap that is blank is taken not to be there
 * @source own derivation
 * @example arrowMass({ ...exampleBundle.arrowSet, weighed: 0.021 }).value.mass // 0.021
 */
export function arrowMass(parts: ArrowParts): Result<ArrowMass> {
  if (parts.weighed !== null) {
    const weighed = given('the mass of the arrow', { arrowMass: parts.weighed });
    return weighed.ok ? ok({ mass: parts.weighed, from: 'weighed', assumedZero: [] }) : weighed;
  }
  const density = densityOf(parts);
  if (!density.ok) return density;
  const needed = given('the mass of an arrow that was not weighed', {
    linearDensity: density.value?.value ?? null,
    arrowLength: parts.length,
    pointMass: parts.pointMass,
  });
  if (!needed.ok) return needed;
  const rest = small(parts);
  if (!rest.ok) return rest;
  const { linearDensity, arrowLength, pointMass } = needed.value;
  return ok({
    mass: linearDensity * arrowLength + pointMass + rest.value.sum,
    from: 'parts',
    assumedZero: rest.value.assumedZero,
  });
}

/**
 * Mass of the bare shaft: from its mass per length, else of a metal tube from its geometry, else what the weighed arrow leaves when its parts are taken off.
 *
 * @equation m_shaft = λ L, or m_shaft = ρ π t (D − t) L, or m_shaft = m_weighed − m_point − m_insert − m_nock − m_fletching − m_pin − m_wrap
 * @param parts - length [m], mass per length [kg/m] or a metal tube's diameter and wall [m], and the masses of parts and whole [kg] of an arrow set [record]
 * @returns m_shaft [kg], how it was found, and the small parts that counted as nothing [record]
 * @validity the refusal names what is missing; a remainder that no shaft of this length can weigh is refused
 * @source own derivation
 * @example shaftMass({ ...exampleBundle.arrowSet, linearDensity: 0.02, length: 0.7 }).value.mass // 0.014
 */
export function shaftMass(parts: ArrowParts): Result<ShaftMass> {
  const density = densityOf(parts);
  if (!density.ok) return density;
  if (density.value !== null || parts.weighed === null) {
    const needed = given('the mass of the shaft', {
      linearDensity: density.value?.value ?? null,
      arrowLength: parts.length,
    });
    if (!needed.ok) return needed;
    const { linearDensity, arrowLength } = needed.value;
    return ok({ mass: linearDensity * arrowLength, from: density.value?.from ?? 'mass per length', assumedZero: [] });
  }
  const needed = given('the mass of the shaft', {
    arrowMass: parts.weighed,
    arrowLength: parts.length,
    pointMass: parts.pointMass,
  });
  if (!needed.ok) return needed;
  const rest = small(parts);
  if (!rest.ok) return rest;
  const mass = needed.value.arrowMass - needed.value.pointMass - rest.value.sum;
  const perLength = mass / needed.value.arrowLength;
  if (perLength < limits.linearDensity.min || perLength > limits.linearDensity.max)
    return refuse(
      'parts against whole',
      'The weighed arrow and its parts leave a mass that no shaft of this length has. Weigh the arrow and its point again.',
      'arrowMass',
    );
  return ok({ mass, from: 'weighed less its parts', assumedZero: rest.value.assumedZero });
}

export interface EndMasses {
  /** Nock, pin, wrap and fletching, which sit close to the nock [kg]. */
  readonly nockMass: number;
  /** Point and insert [kg]. */
  readonly frontMass: number;
  readonly assumedZero: readonly SmallPart[];
}

/**
 * Masses that sit on the two ends of a shaft.
 *
 * @equation m_nock end = m_nock + m_pin + m_wrap + m_fletching, m_front = m_point + m_insert
 * @param parts - the masses of the parts [kg] of an arrow set [record]
 * @returns nockMass and frontMass [kg], and the small parts that counted as nothing [record]
 * @validity the point is needed; figures outside the model's limits are refused
 * @source own derivation
 * @example endMasses({ pointMass: 0.007, insertMass: 0.001, nockMass: 0.0005, fletchingMass: 0.0005, pinMass: null, wrapMass: null }).value.frontMass // 0.008
 */
export function endMasses(parts: Pick<ArrowParts, 'pointMass'> & LightParts): Result<EndMasses> {
  const point = given('the mass at the front', { pointMass: parts.pointMass });
  if (!point.ok) return point;
  const rest = small(parts);
  if (!rest.ok) return rest;
  const insert = parts.insertMass ?? 0;
  return ok({
    nockMass: rest.value.sum - insert,
    frontMass: point.value.pointMass + insert,
    assumedZero: rest.value.assumedZero,
  });
}
