import { defaultPreferences, ok, refuse, type ArrowSet, type Result, type UnitChoice } from '../model/index.ts';
import { given } from '../model/given.ts';
import { together } from '../model/sentence.ts';
import { buildDisagrees } from './disagrees.ts';
import { shaftMass, type ShaftMass, type SmallPart } from './mass.ts';
import { partPlaces, type PartName, type Place } from './places.ts';

/** One part with its mass [kg] and its place from the throat of the nock [m]. */
export interface ArrowPart extends Place {
  readonly name: PartName;
  readonly mass: number;
}

/** An arrow put together from its parts. */
export interface ArrowBuild {
  /** From the nock on. A nock, fletching or shaft that was not weighed counts as nothing and keeps its place; a pin, wrap or insert that is blank is not there. */
  readonly parts: readonly ArrowPart[];
  /** Sum of the parts [kg]. */
  readonly mass: number;
  /** Throat of the nock to the balance point, from the parts [m]. */
  readonly balance: number;
  /** Front-of-centre, as a share of the arrow's length [-]. */
  readonly foc: number;
  /** Moment of inertia about the balance point, across the arrow [kg m²]. */
  readonly inertia: number;
  /** Throat of the nock to end of shaft [m]. */
  readonly length: number;
  /** Throat of the nock to the tip of the point [m]. */
  readonly wholeLength: number;
  readonly shaftFrom: ShaftMass['from'];
  /** Small parts that counted as nothing. */
  readonly assumedZero: readonly SmallPart[];
  /** What was not measured and how it was placed, ready to read; null when nothing was assumed. */
  readonly assumes: string | null;
  readonly measured: { readonly mass: number | null; readonly balance: number | null; readonly foc: number | null };
  /** Where what was weighed or balanced and the parts differ by more than their doubt, ready to read; null when they agree. */
  readonly disagrees: string | null;
}

/**
 * Front-of-centre of an arrow, as ASTM F1435 counts it.
 *
 * @equation FOC = (A − L/2)/L
 * @param balance - A, throat of the nock to the balance point [m]
 * @param length - L, throat of the nock to end of shaft [m]
 * @returns FOC, as a share of L; the trade writes a hundred times this, in percent [-]
 * @validity any length above nought
 * @source astm-f1435
 * @example frontOfCentre(0.45, 0.75) // 0.09999999999999999
 */
export function frontOfCentre(balance: number, length: number): number {
  return (balance - length / 2) / length;
}

const lightParts = {
  nock: 'nockMass',
  pin: 'pinMass',
  wrap: 'wrapMass',
  fletching: 'fletchingMass',
  insert: 'insertMass',
} as const satisfies Partial<Record<PartName, keyof ArrowSet>>;
const order: readonly PartName[] = ['nock', 'pin', 'wrap', 'fletching', 'shaft', 'insert', 'point'];
const rare: readonly PartName[] = ['pin', 'wrap', 'insert'];

/**
 * An arrow from its parts: mass, balance point, front-of-centre and moment of inertia.
 *
 * @equation m = Σ mᵢ, A = Σ mᵢ xᵢ/m, FOC = (A − L/2)/L, J = Σ mᵢ ((xᵢ − A)² + lᵢ²/12)
 * @param arrowSet - length [m], shaft and masses of the parts [kg], and what was weighed and balanced [record]
 * @param units - the person's choice of units, for the sentences; the default when left out [record]
 * @returns parts with their places, mass [kg], balance [m], front-of-centre [-], inertia [kg m²], and where it disagrees with what was measured [record]
 * @validity places that nobody measured are ordinary ones, and the answer says so; each part counts as an even rod of its length; refused when length, point or shaft is missing, for figures outside the model's limits, and for a balance point beyond the tip
 * @source astm-f1435
 * @example buildArrow(exampleBundle.arrowSet).value.parts.length // 5
 */
export function buildArrow(arrowSet: ArrowSet, units: UnitChoice = defaultPreferences.units): Result<ArrowBuild> {
  const known = given<'arrowLength' | 'pointMass'>('the build of the arrow', {
    arrowLength: arrowSet.length,
    pointMass: arrowSet.pointMass,
  });
  if (!known.ok) return known;
  const shaft = shaftMass(arrowSet);
  if (!shaft.ok) return shaft;
  const light = given('the build of the arrow', {
    nockMass: arrowSet.nockMass ?? 0,
    pinMass: arrowSet.pinMass ?? 0,
    wrapMass: arrowSet.wrapMass ?? 0,
    fletchingMass: arrowSet.fletchingMass ?? 0,
    insertMass: arrowSet.insertMass ?? 0,
    vaneFromThroat: arrowSet.vaneFromThroat ?? 0,
    vaneLength: arrowSet.vaneLength ?? 0.05,
    arrowMass: arrowSet.weighed ?? 0.02,
    balance: arrowSet.balance ?? 0.4,
  });
  if (!light.ok) return light;

  const { arrowLength: length, pointMass } = known.value;
  const places = partPlaces(arrowSet, length);
  const massOf = (name: PartName): number | null =>
    name === 'shaft' ? shaft.value.mass : name === 'point' ? pointMass : arrowSet[lightParts[name]];
  const parts = order
    .filter((name) => !rare.includes(name) || (massOf(name) ?? 0) > 0)
    .map((name): ArrowPart => ({ name, mass: massOf(name) ?? 0, ...places[name] }));
  const mass = parts.reduce((sum, part) => sum + part.mass, 0);
  const balance = parts.reduce((sum, part) => sum + part.mass * part.at, 0) / mass;
  const inertia = parts.reduce(
    (sum, { mass: own, at, from, to }) => sum + own * ((at - balance) ** 2 + (to - from) ** 2 / 12),
    0,
  );
  const wholeLength = places.point.to;
  const { balance: measured, weighed } = arrowSet;
  if (measured !== null && measured > wholeLength)
    return refuse(
      'balance beyond the tip',
      'The balance point lies beyond the tip of this arrow. Measure it again, from the throat of the nock.',
      'balance',
    );
  const assumed = parts.filter((part) => part.placed === 'assumed' && part.mass > 0).map(({ name }) => name);
  const assumedZero = (['insertMass', 'nockMass', 'fletchingMass'] as const).filter((part) => arrowSet[part] === null);
  return ok({
    parts,
    mass,
    balance,
    foc: frontOfCentre(balance, length),
    inertia,
    length,
    wholeLength,
    shaftFrom: shaft.value.from,
    assumedZero,
    assumes: assumed.length === 0 ? null : `Not measured, so at the ordinary place (from memory): ${together(assumed)}.`,
    measured: { mass: weighed, balance: measured, foc: measured === null ? null : frontOfCentre(measured, length) },
    disagrees: buildDisagrees({ mass, balance, length }, { mass: weighed, balance: measured }, assumedZero, units),
  });
}
