import type { ArrowSet } from '../model/index.ts';
import { grain, inch } from '../units/exact.ts';

/** How closely the arrows of a set are to match: for the club, or sorted for a match. */
export type Matching = 'club' | 'match';

/** Each way from the middle of the set. */
export interface Tolerances {
  readonly mass: number;
  /** In the figure that spine is sorted in: pounds of a wooden shaft [-], deflection on the standard tester of any other [m]. */
  readonly spine: number;
  /** Most total indicator reading [m]. */
  readonly straightness: number;
  /** Most spread of four readings round one shaft, on the standard tester [m]; null where nobody names one. */
  readonly around: number | null;
  readonly source: 'common practice' | 'from memory';
}

const wood = (massGr: number, spineLb: number, source: Tolerances['source']): Tolerances => ({
  mass: massGr * grain,
  spine: spineLb,
  straightness: inch / 32,
  around: null,
  source,
});
const tube = (massGr: number, straightnessIn: number): Tolerances => ({
  mass: massGr * grain,
  spine: 0.01 * inch,
  straightness: straightnessIn * inch,
  around: 0.01 * inch,
  source: 'from memory',
});

const table: Readonly<Record<'wood' | 'tube', Readonly<Record<Matching, Tolerances>>>> = {
  wood: { club: wood(10, 2.5, 'common practice'), match: wood(5, 2, 'from memory') },
  tube: { club: tube(3, 0.006), match: tube(1, 0.003) },
};

/**
 * How closely arrows of a material are sorted.
 *
 * @equation wood: club ± 10 gr and one 5 lb group, match ± 5 gr and ± 2 lb, both within 1/32 in of straight; others: club ± 3 gr, ± .010 in and .006 in of straight, match ± 1 gr, ± .010 in and .003 in; round one shaft .010 in
 * @param material - what the shafts are made of [choice]
 * @param matching - for the club, or sorted for a match [choice]
 * @returns tolerances [record]
 * @validity the wood club's mass and spine are common practice, all others from memory; the spine round a shaft is judged by the same .010 in, for want of another figure
 * @source from memory
 * @example tolerancesOf('wood', 'match').spine // 2
 */
export function tolerancesOf(material: ArrowSet['material'], matching: Matching): Tolerances {
  return table[material === 'wood' ? 'wood' : 'tube'][matching];
}
