import { limits, ok, refuse, type ArrowSet, type Result } from '../model/index.ts';
import { given } from '../model/given.ts';

/** What an arrow weighs, whole or in parts. */
export type ArrowParts = Pick<
  ArrowSet,
  'length' | 'linearDensity' | 'pointMass' | 'insertMass' | 'nockMass' | 'fletchingMass' | 'weighed'
>;

/** The small parts that count as nothing while they are not filled in: a bare figure would be a guess, and they are light. */
export type SmallPart = 'insertMass' | 'nockMass' | 'fletchingMass';

const smallParts: readonly SmallPart[] = ['insertMass', 'nockMass', 'fletchingMass'];

export interface ArrowMass {
  readonly mass: number;
  readonly from: 'weighed' | 'parts';
  readonly assumedZero: readonly SmallPart[];
}

export interface ShaftMass {
  readonly mass: number;
  readonly from: 'mass per length' | 'weighed less its parts';
  readonly assumedZero: readonly SmallPart[];
}

const small = (parts: Pick<ArrowParts, SmallPart>): Result<{ sum: number; assumedZero: SmallPart[] }> => {
  const assumedZero = smallParts.filter((part) => parts[part] === null);
  const figures = {
    insertMass: parts.insertMass ?? 0,
    nockMass: parts.nockMass ?? 0,
    fletchingMass: parts.fletchingMass ?? 0,
  };
  const believable = given('the mass of the arrow', figures);
  return believable.ok ? ok({ sum: figures.insertMass + figures.nockMass + figures.fletchingMass, assumedZero }) : believable;
};

/**
 * Mass of an arrow: the weighed figure when there is one, else the sum of its parts.
 *
 * @equation m = m_weighed, or m = λ L + m_point + m_insert + m_nock + m_fletching
 * @param parts - length [m], mass per length [kg/m], and the masses of parts and whole [kg] of an arrow set [record]
 * @returns m [kg], whether it was weighed or summed, and the small parts that counted as nothing [record]
 * @validity without a weighed figure the shaft's mass per length, length and point are needed: the refusal names what is missing; figures outside the model's limits are refused
 * @source own derivation
 * @example arrowMass({ ...exampleBundle.arrowSet, weighed: 0.021 }).value.mass // 0.021
 */
export function arrowMass(parts: ArrowParts): Result<ArrowMass> {
  if (parts.weighed !== null) {
    const weighed = given('the mass of the arrow', { arrowMass: parts.weighed });
    return weighed.ok ? ok({ mass: parts.weighed, from: 'weighed', assumedZero: [] }) : weighed;
  }
  const needed = given('the mass of an arrow that was not weighed', {
    linearDensity: parts.linearDensity,
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
 * Mass of the bare shaft: from its mass per length, else what the weighed arrow leaves when its parts are taken off.
 *
 * @equation m_shaft = λ L, or m_shaft = m_weighed − m_point − m_insert − m_nock − m_fletching
 * @param parts - length [m], mass per length [kg/m], and the masses of parts and whole [kg] of an arrow set [record]
 * @returns m_shaft [kg], how it was found, and the small parts that counted as nothing [record]
 * @validity the refusal names what is missing; a remainder that no shaft of this length can weigh is refused
 * @source own derivation
 * @example shaftMass({ ...exampleBundle.arrowSet, linearDensity: 0.02, length: 0.7 }).value.mass // 0.014
 */
export function shaftMass(parts: ArrowParts): Result<ShaftMass> {
  if (parts.linearDensity !== null || parts.weighed === null) {
    const needed = given('the mass of the shaft', { linearDensity: parts.linearDensity, arrowLength: parts.length });
    if (!needed.ok) return needed;
    const { linearDensity, arrowLength } = needed.value;
    return ok({ mass: linearDensity * arrowLength, from: 'mass per length', assumedZero: [] });
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
  const density = mass / needed.value.arrowLength;
  if (density < limits.linearDensity.min || density > limits.linearDensity.max)
    return refuse(
      'parts against whole',
      'The weighed arrow and its parts leave a mass that no shaft of this length has. Weigh the arrow and its point again.',
      'arrowMass',
    );
  return ok({ mass, from: 'weighed less its parts', assumedZero: rest.value.assumedZero });
}

export interface EndMasses {
  /** Nock and fletching, which sit close to the nock [kg]. */
  readonly nockMass: number;
  /** Point and insert [kg]. */
  readonly frontMass: number;
  readonly assumedZero: readonly SmallPart[];
}

/**
 * Masses that sit on the two ends of a shaft.
 *
 * @equation m_nock end = m_nock + m_fletching, m_front = m_point + m_insert
 * @param parts - the masses of the parts [kg] of an arrow set [record]
 * @returns nockMass and frontMass [kg], and the small parts that counted as nothing [record]
 * @validity the point is needed; figures outside the model's limits are refused
 * @source own derivation
 * @example endMasses({ pointMass: 0.007, insertMass: 0.001, nockMass: 0.0005, fletchingMass: 0.0005 }).value.frontMass // 0.008
 */
export function endMasses(parts: Pick<ArrowParts, 'pointMass' | SmallPart>): Result<EndMasses> {
  const point = given('the mass at the front', { pointMass: parts.pointMass });
  if (!point.ok) return point;
  const rest = small(parts);
  if (!rest.ok) return rest;
  return ok({
    nockMass: (parts.nockMass ?? 0) + (parts.fletchingMass ?? 0),
    frontMass: point.value.pointMass + (parts.insertMass ?? 0),
    assumedZero: rest.value.assumedZero,
  });
}
