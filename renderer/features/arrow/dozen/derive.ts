import { bestMatched, shootingArrows, spreadAtTarget, type Matching, type SetStatistics } from '../../../../core/dozen/index.ts';
import type { ArrowSet } from '../../../../core/model/arrowSet.ts';
import type { Bundle } from '../../../../core/model/bundle.ts';
import type { UnitChoice } from '../../../../core/model/preferences.ts';
import { capital } from '../../../../core/findings/index.ts';
import { together } from '../../../../core/model/sentence.ts';
import { factorOf, textQuantity, unitOf } from '../../../../core/units/index.ts';
import type { StripData } from '../../../plots/strip/marks.ts';

export interface Strip {
  readonly name: 'mass' | 'spine';
  /** What the strip shows, in one line. */
  readonly line: string;
  readonly data: StripData;
}

/** A strip for the mass and one for the spine, where two arrows or more have the figure; wood is sorted in pounds. */
export function stripsOf(arrowSet: ArrowSet, set: SetStatistics, units: UnitChoice): readonly Strip[] {
  const arrows = shootingArrows(arrowSet);
  if (!arrows.ok) return [];
  const wood = arrowSet.material === 'wood';
  const pounds = (value: number) => `${value.toFixed(1)} lb`;
  const show = {
    mass: (si: number) => textQuantity(si, 'mass', units),
    spine: wood ? pounds : (si: number) => textQuantity(si, 'deflection', units),
  };
  return (['mass', 'spine'] as const).flatMap((name): Strip[] => {
    const values = arrows.value.flatMap((arrow) => (arrow[name] === null ? [] : { number: arrow.number, value: arrow[name] }));
    if (values.length < 2) return [];
    const odd = new Set(set.outliers.filter(({ what }) => what === name).map(({ number }) => number));
    const sorted = values.map(({ value }) => value).toSorted((a, b) => a - b);
    const half = sorted.length / 2;
    const median = ((sorted[Math.ceil(half) - 1] ?? 0) + (sorted[Math.floor(half)] ?? 0)) / 2;
    const tolerance = set.tolerances[name];
    const range = `${show[name](sorted[0] ?? 0)} to ${show[name](sorted.at(-1) ?? 0)}`;
    const plainUnit = name === 'spine' && wood;
    return [
      {
        name,
        line: `${capital(name)} of ${values.length}: ${range}, the middle ${show[name](median)}; ${show[name](tolerance)} either way is let pass.`,
        data: {
          points: values.map(({ number, value }) => ({ number, value, odd: odd.has(number) })),
          median,
          tolerance,
          perUnit: plainUnit ? 1 : factorOf(name === 'mass' ? 'mass' : 'deflection', units),
          unit: plainUnit ? 'lb' : unitOf(name === 'mass' ? 'mass' : 'deflection', units),
        },
      },
    ];
  });
}

/** What else was read of the set, in one line; empty when nothing was. */
export function restOfSet(set: SetStatistics, units: UnitChoice): string {
  const text = (si: number) => textQuantity(si, 'deflection', units);
  return [
    set.around === null ? '' : `Round the shaft up to ${text(set.around.high)} apart.`,
    set.straightness === null ? '' : `Straight within ${text(set.straightness.high)}.`,
    set.setAside === 0 ? '' : `${set.setAside} set aside, left out of these figures.`,
  ]
    .filter((part) => part !== '')
    .join(' ');
}

/** The arrows that match best, and what that wins over taking them all. */
export function matchedLine(arrowSet: ArrowSet, count: number, matching: Matching, units: UnitChoice): string {
  const answer = bestMatched(arrowSet, count, matching);
  if (!answer.ok) return answer.problem.sentence;
  const { numbers, massRange, spineRange, poundsRange, ofAll } = answer.value;
  const mass = (si: number) => textQuantity(si, 'mass', units);
  const spine =
    poundsRange !== null
      ? ` and ${poundsRange.toFixed(1)} lb of spine`
      : spineRange === null
        ? ''
        : ` and ${textQuantity(spineRange, 'deflection', units)} of spine`;
  const all = ofAll.arrows === numbers.length ? '' : `; all ${ofAll.arrows} lie within ${mass(ofAll.massRange)}`;
  return `Arrows ${together(numbers.map(String))} match best: within ${mass(massRange)}${spine}${all}.`;
}

/** What the spread in mass does up and down at a distance, and what cannot be told. */
export function atTarget(
  bundle: Bundle,
  distance: number,
  units: UnitChoice,
): { readonly line: string; readonly cannot: string | null } {
  const answer = spreadAtTarget(bundle, distance);
  if (!answer.ok) return { line: answer.problem.sentence, cannot: null };
  const { fromMass, lightest, heaviest, fromSpine, fromStraightness } = answer.value;
  const drop = (si: number) => textQuantity(si, 'drop', units);
  const far = textQuantity(distance, 'distance', units);
  return {
    line:
      lightest === heaviest || fromMass.value === 0
        ? `At ${far} their masses make no difference.`
        : `At ${far} arrow ${lightest}, the lightest, strikes ${drop(fromMass.value)} above arrow ${heaviest}, the heaviest (${drop(fromMass.low)} to ${drop(fromMass.high)}).`,
    cannot: `${fromSpine} ${fromStraightness}`,
  };
}

/** The section's title: how many, and which are odd. */
export function dozenTitle(arrowSet: ArrowSet, set: SetStatistics | null): string {
  const many = arrowSet.arrows.length;
  if (set === null) return many === 0 ? 'The dozen is not numbered yet' : 'The dozen';
  const odd = [...new Set(set.outliers.map(({ number }) => number))];
  const named = odd.length > 4 ? `${odd.length} of them` : `arrow${odd.length === 1 ? '' : 's'} ${together(odd.map(String))}`;
  const read = [set.mass, set.spine, set.around, set.straightness].some((spread) => spread !== null);
  if (odd.length === 0 && !read) return `The dozen: ${set.shooting} numbered, none weighed yet`;
  return odd.length === 0
    ? `The dozen: ${set.shooting} shooting, none of them odd`
    : `The dozen: ${set.shooting} shooting, ${named} odd`;
}
