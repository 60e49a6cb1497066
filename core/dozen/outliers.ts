import { type ArrowSet, type UnitChoice } from '../model/index.ts';
import { together } from '../model/sentence.ts';
import { textQuantity } from '../units/index.ts';
import type { SortedArrow } from './shooting.ts';
import { spreadOf } from './spread.ts';
import type { Tolerances } from './tolerances.ts';

/** An arrow that does not belong with the others. */
export interface Outlier {
  readonly number: number;
  readonly what: 'mass' | 'spine' | 'around' | 'straightness' | 'flaw';
  readonly sentence: string;
  /** The arrow's own figure: mass [kg], spine as it is sorted (pounds of wood, else deflection [m]), spread round the shaft or straightness [m], or how many parts have a flaw. */
  readonly value: number;
}

/** Of two arrows that differ nobody can say which is the odd one. */
const FEWEST = 3;
const ROUNDING = 1e-9;

/**
 * The arrows that do not belong with the others of their set.
 *
 * @equation |x − median| > tolerance for mass and spine, of three arrows or more; straightness and spread round the shaft above their most; any flaw
 * @param arrows - those that are shot, from shootingArrows [list]
 * @param tolerances - from tolerancesOf [record]
 * @param material - what the shafts are made of: wood is sorted in pounds [choice]
 * @param units - the person's choice of units, for the sentences [record]
 * @returns one entry for each reason, flaws first, then by number [list]
 * @validity a flaw is named whatever the number of arrows
 * @source from memory
 * @example outliersOf([], tolerancesOf('carbon', 'club'), 'carbon', defaultPreferences.units) // []
 */
export function outliersOf(
  arrows: readonly SortedArrow[],
  tolerances: Tolerances,
  material: ArrowSet['material'],
  units: UnitChoice,
): readonly Outlier[] {
  const deflection = (si: number) => textQuantity(si, 'deflection', units);
  const flawed = arrows
    .filter(({ flaws }) => flaws.length > 0)
    .map(({ number, flaws }): Outlier => ({
      number,
      what: 'flaw',
      value: flaws.length,
      sentence: `Arrow ${number}: a flaw in the ${together(flaws)}. Do not shoot it; set it aside.`,
    }));
  const bent = arrows.flatMap(({ number, straightness: value }): Outlier[] =>
    value === null || value <= tolerances.straightness * (1 + ROUNDING)
      ? []
      : [
          {
            number,
            what: 'straightness',
            value,
            sentence: `Arrow ${number} wobbles ${deflection(value)} when it is rolled, more than ${deflection(tolerances.straightness)}. Straighten it or set it aside.`,
          },
        ],
  );
  const most = tolerances.around;
  const uneven = arrows.flatMap(({ number, around: value }): Outlier[] =>
    value === null || most === null || value <= most * (1 + ROUNDING)
      ? []
      : [
          {
            number,
            what: 'around',
            value,
            sentence: `Arrow ${number} reads ${deflection(value)} apart round its shaft, more than ${deflection(most)}. Turn its nock so that the stiff side meets the bow as in the others.`,
          },
        ],
  );
  const mass = oddOnes(arrows, 'mass', tolerances.mass, (si) => textQuantity(si, 'mass', units), [
    'weighs',
    'heavier',
    'lighter',
  ]);
  const spine = oddOnes(
    arrows,
    'spine',
    tolerances.spine,
    material === 'wood' ? (pounds) => `${pounds.toFixed(1)} lb` : deflection,
    material === 'wood' ? ['spines', 'stiffer', 'weaker'] : ['spines', 'weaker', 'stiffer'],
  );
  return [...flawed, ...[...mass, ...spine, ...bent, ...uneven].toSorted((a, b) => a.number - b.number)];
}

function oddOnes(
  arrows: readonly SortedArrow[],
  what: 'mass' | 'spine',
  tolerance: number,
  text: (value: number) => string,
  [verb, more, less]: readonly [string, string, string],
): Outlier[] {
  const spread = spreadOf(arrows.flatMap((arrow) => arrow[what] ?? []));
  if (spread === null || spread.n < FEWEST) return [];
  return arrows.flatMap((arrow): Outlier[] => {
    const value = arrow[what];
    if (value === null) return [];
    const off = value - spread.median;
    if (Math.abs(off) <= tolerance * (1 + ROUNDING)) return [];
    return [
      {
        number: arrow.number,
        what,
        value,
        sentence: `Arrow ${arrow.number} ${verb} ${text(value)}, ${text(Math.abs(off))} ${off > 0 ? more : less} than the middle of the set (${text(spread.median)}); up to ${text(tolerance)} is let pass.`,
      },
    ];
  });
}
