import { ok, refuse, type ArrowSet, type Measure, type NumberedArrow, type Result } from '../model/index.ts';
import { given } from '../model/given.ts';
import { standardDeflection, woodPounds } from '../arrow/index.ts';

/** One arrow of the set with the figures it is sorted by; null where it was not read. */
export interface SortedArrow {
  readonly number: number;
  /** [kg] */
  readonly mass: number | null;
  /** As the set's tester reads it at the index mark [m]. */
  readonly read: number | null;
  /** What spine is sorted by: pounds of a wooden shaft [-], deflection on the standard tester of any other [m]. */
  readonly spine: number | null;
  /** Most less least of four readings round the shaft, on the standard tester [m]. */
  readonly around: number | null;
  /** Total indicator reading [m]. */
  readonly straightness: number | null;
  /** The parts in which a flaw was seen. */
  readonly flaws: readonly string[];
}

const parts = ['nock', 'shaft', 'point', 'fletching'] as const;

/** As the arrow meets the bow: read at the index mark, else the mean of the other places. */
const spineRead = (spines: readonly (number | null)[]): number | null => {
  const [index] = spines;
  if (typeof index === 'number') return index;
  const read = spines.filter((one) => one !== null);
  return read.length === 0 ? null : read.reduce((sum, one) => sum + one, 0) / read.length;
};

const within = (key: Measure, value: number | null): Result<unknown> =>
  value === null ? ok(null) : given('the set', { [key]: value } as Record<Measure, number>);

const believable = ({ mass, spines, straightness }: NumberedArrow): Result<unknown> =>
  [
    within('arrowMass', mass),
    within('straightness', straightness),
    ...spines.map((deflection) => within('deflection', deflection)),
  ].find((one) => !one.ok) ?? ok(null);

/**
 * The arrows of a numbered set that are shot, by number, with the figures they are sorted by.
 *
 * @equation spine at the index mark, else the mean of the other places; round the shaft the most less the least of four
 * @param arrowSet - material, convention and the numbered arrows [record]
 * @returns the arrows that are not set aside, in the order of their numbers [list]
 * @validity refused when no arrow is numbered or all are set aside, and for a figure outside the model's limits, naming the arrow
 * @source astm-f2031
 * @example shootingArrows(exampleBundle.arrowSet).ok // false
 */
export function shootingArrows(arrowSet: Pick<ArrowSet, 'arrows' | 'material' | 'convention'>): Result<readonly SortedArrow[]> {
  const { arrows, material, convention } = arrowSet;
  const shooting = arrows.filter(({ setAside }) => !setAside).toSorted((a, b) => a.number - b.number);
  if (shooting.length === 0)
    return refuse(
      'no arrows',
      arrows.length === 0
        ? 'No arrow of this set is numbered yet. Number them, and weigh each.'
        : 'Every arrow of this set is set aside.',
      'arrows',
    );
  for (const arrow of shooting) {
    const figures = believable(arrow);
    if (!figures.ok) return refuse(figures.problem.code, `Arrow ${arrow.number}: ${figures.problem.sentence}`, 'arrows');
  }
  return ok(
    shooting.map(({ number, mass, spines, straightness, lookOver }): SortedArrow => {
      const read = spineRead(spines);
      const round = spines.filter((one) => one !== null);
      return {
        number,
        mass,
        read,
        spine: read === null ? null : material === 'wood' ? woodPounds(read, convention) : standardDeflection(read, convention),
        around:
          round.length < 4
            ? null
            : standardDeflection(Math.max(...round), convention) - standardDeflection(Math.min(...round), convention),
        straightness,
        flaws: lookOver === null ? [] : parts.filter((part) => lookOver[part] === 'flaw'),
      };
    }),
  );
}
