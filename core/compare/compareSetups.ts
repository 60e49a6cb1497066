import { sameDistance } from '../group/index.ts';
import type { ShotBundle } from '../model/bundle.ts';
import { defaultPreferences, type UnitChoice } from '../model/preferences.ts';
import type { Use } from '../units/uses.ts';
import { asSetFigures } from './asSet.ts';
import { doubtedFigures, inSections } from './figures.ts';
import { halfOfDifference, type DoubtedFigure, type Section } from './figure.ts';
import { comparableGroups, type ChosenGroups } from './groupFigures.ts';
import { spreadNoise } from './spreadNoise.ts';

export interface Side {
  readonly value: number;
  readonly half: number | null;
}

/** One figure of two set-ups side by side. SI. */
export interface CompareRow {
  readonly key: string;
  readonly name: string;
  readonly use: Use;
  readonly section: Section;
  readonly reference: Side | null;
  readonly other: Side | null;
  /** Other less reference. */
  readonly difference: number | null;
  /** Half width of what measuring, estimating and chance alone would do to the difference. */
  readonly noise: number | null;
  readonly verdict: 'real' | 'noise' | 'unknown' | 'same';
  /** What it rests on, or what it waits for. */
  readonly note: string;
}

/** Two figures nearer than this, relatively, are the same but for rounding. */
const ROUNDING = 1e-12;

/**
 * Two set-ups side by side, figure by figure, with what is noise said to be noise.
 *
 * @equation difference = other − reference; noise = √Σ (δ_other − δ_reference)², where doubts that both share cancel; real when |difference| > noise
 * @param reference - the set-up counted from, with its groups oldest first [record]
 * @param other - the other set-up with its groups [record]
 * @param units - the person's choice of units, for the notes; the default when left out [record]
 * @returns the rows by section [list]
 * @validity groups are compared at one distance only, else the verdict is `unknown` and the note says why; mean radii by spreadNoise
 * @source jcgm-100
 * @example compareSetups(exampleBundle, exampleBundle)[0].verdict // "same"
 */
export function compareSetups(
  reference: ShotBundle,
  other: ShotBundle,
  units: UnitChoice = defaultPreferences.units,
): readonly CompareRow[] {
  const [one, another] = [comparableGroups(reference.groups), comparableGroups(other.groups)];
  const fletched = pairOf(one.fletched, another.fletched, sameDistance);
  const trial = pairOf(one.trials, another.trials, (a, b) => sameDistance(a.bare, b.bare));
  const chosen = (index: 0 | 1): ChosenGroups => {
    const own = index === 0 ? one : another;
    return { fletched: fletched?.[index] ?? own.fletched[0] ?? null, trial: trial?.[index] ?? own.trials[0] ?? null };
  };
  const left = inSections([...doubtedFigures(reference, chosen(0), units), ...asSetFigures(reference, other)]);
  const right = inSections([...doubtedFigures(other, chosen(1), units), ...asSetFigures(other, reference)]);
  return left.map((figure, index): CompareRow => {
    const pair = right[index];
    if (pair === undefined) throw new RangeError('Both set-ups have the same figures.');
    const radii = figure.key === 'meanRadius';
    if (figure.section === 'On the face' && (radii ? fletched : trial) === null) return apart(figure, pair);
    if (!radii || fletched === null) return rowOf(figure, pair, halfOfDifference(figure.doubts, pair.doubts));
    const larger = (pair.value ?? 0) > (figure.value ?? 0);
    return rowOf(figure, pair, spreadNoise(fletched[0].shots, fletched[1].shots, larger));
  });
}

/** The newest of the first that has its like in the second. */
function pairOf<T>(first: readonly T[], second: readonly T[], alike: (a: T, b: T) => boolean): readonly [T, T] | null {
  for (const one of first) {
    const match = second.find((another) => alike(one, another));
    if (match !== undefined) return [one, match];
  }
  return null;
}

const sideOf = ({ value, half }: DoubtedFigure): Side | null => (value === null ? null : { value, half });
const plain = ({ key, name, use, section }: DoubtedFigure) => ({ key, name, use, section });

function rowOf(reference: DoubtedFigure, other: DoubtedFigure, noise: number): CompareRow {
  const base = { ...plain(reference), reference: sideOf(reference), other: sideOf(other) };
  if (reference.value === null || other.value === null) {
    const waits = reference.value === null ? reference.note : other.note;
    return { ...base, difference: null, noise: null, verdict: 'unknown', note: waits };
  }
  const difference = other.value - reference.value;
  const same = Math.abs(difference) <= ROUNDING * Math.max(Math.abs(reference.value), Math.abs(other.value));
  const verdict = same ? 'same' : Math.abs(difference) > noise ? 'real' : 'noise';
  return { ...base, difference: same ? 0 : difference, noise, verdict, note: noteOf(reference.note, other.note) };
}

const noteOf = (first: string, second: string): string =>
  first === second ? first : [first, second].filter((note) => note !== '').join('; ');

/** Groups of two distances cannot be set against each other: both stand, and nothing is said of their difference. */
function apart(reference: DoubtedFigure, other: DoubtedFigure): CompareRow {
  const both = reference.value !== null && other.value !== null;
  const note = both
    ? `Shot at two distances: ${reference.note}; ${other.note}.`
    : reference.value === null
      ? reference.note
      : other.note;
  return {
    ...plain(reference),
    reference: sideOf(reference),
    other: sideOf(other),
    difference: null,
    noise: null,
    verdict: 'unknown',
    note,
  };
}
