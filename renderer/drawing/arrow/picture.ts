import { buildArrow, frontOfCentre, partPlaces, shaftMass, type PartName } from '../../../core/arrow/index.ts';
import type { ArrowSet } from '../../../core/model/arrowSet.ts';
import { inch } from '../../../core/units/exact.ts';

/** The parts of an arrow in their order from the nock on, as the masses lane names them. */
const partNames: readonly PartName[] = ['nock', 'pin', 'wrap', 'fletching', 'shaft', 'insert', 'point'];

/** Where a part of the arrow lies along it, from the throat of the nock toward the point [m]. */
export interface PartPlace {
  readonly name: PartName;
  readonly from: number;
  readonly to: number;
  /** Its balance. */
  readonly at: number;
  /** Its mass [kg]; null where nobody has weighed it, and then it is drawn in pencil. */
  readonly mass: number | null;
}

/** What the drawing shows of an arrow [m, kg]. */
export interface ArrowPicture {
  readonly material: ArrowSet['material'];
  readonly length: number;
  readonly lengthKnown: boolean;
  readonly diameter: number;
  /** From the very back of the nock to the tip of the point, measured from the throat. */
  readonly back: number;
  readonly tip: number;
  readonly parts: readonly PartPlace[];
  readonly vaneCount: number;
  readonly balance: { readonly at: number; readonly foc: number; readonly measured: boolean } | null;
}

/** What an arrow of which nothing is known is drawn like, in pencil; no figure is computed from it. */
const pencil = { length: 28 * inch, diameter: 0.0065, vaneCount: 3 } as const;

const massFields = {
  nock: 'nockMass',
  pin: 'pinMass',
  wrap: 'wrapMass',
  fletching: 'fletchingMass',
  insert: 'insertMass',
  point: 'pointMass',
} as const satisfies Record<Exclude<PartName, 'shaft'>, keyof ArrowSet>;

/** The arrow as it can be drawn: as measured, and pencilled in where it is not. */
export function arrowPicture(arrowSet: ArrowSet): ArrowPicture {
  const length = arrowSet.length ?? pencil.length;
  const places = partPlaces(arrowSet, length);
  const shaft = shaftMass(arrowSet);
  return {
    material: arrowSet.material,
    length,
    lengthKnown: arrowSet.length !== null,
    diameter: arrowSet.diameter ?? pencil.diameter,
    back: places.nock.from,
    tip: places.point.to,
    parts: partNames.map((name) => ({
      name,
      ...places[name],
      mass: name === 'shaft' ? (shaft.ok ? shaft.value.mass : null) : arrowSet[massFields[name]],
    })),
    vaneCount: arrowSet.vaneCount ?? pencil.vaneCount,
    balance: balanceOf(arrowSet),
  };
}

/** Measured where somebody did, else from the parts. */
function balanceOf(arrowSet: ArrowSet): ArrowPicture['balance'] {
  const { balance, length } = arrowSet;
  if (balance !== null) return length === null ? null : { at: balance, foc: frontOfCentre(balance, length), measured: true };
  const build = buildArrow(arrowSet);
  return build.ok ? { at: build.value.balance, foc: build.value.foc, measured: false } : null;
}
