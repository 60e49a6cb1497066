import { fitMarks, markError, readingAt, usualShots, type FittedMarks, type KnownMark } from '../../core/aim/index.ts';
import type { Random } from '../../fixtures/random.ts';
import { drawTruth, millimetreScale, shotIn, targetPriors, type Truth } from '../core/aim/marks/anyMarks.ts';
import { share, shares, type Bound, type Figure } from './row.ts';

const DRAWS = 3000;
const WANTED: Bound = [0.93, 0.98];

/** Nearer than, between and beyond the known marks [m]. */
const asked = [10, 30, 50, 70, 90];

const sets: readonly (readonly number[])[] = [[30], [18, 30], [18, 50], [18, 30, 50], [18, 30, 40, 50], [20, 30, 40, 50, 60, 70]];
const words = (known: readonly number[]): string => `${known.length === 1 ? 'mark' : 'marks'} at ${known.join(', ')} m`;

function fitted(marks: readonly KnownMark[]): FittedMarks {
  const fit = fitMarks(marks, millimetreScale, targetPriors);
  if (!fit.ok) throw new Error(fit.problem.sentence);
  return fit.value;
}

/** A truth as likely as what is held beforehand, and marks shot in from it; arrows may scatter wider than they were taken to. */
function shotSet(random: Random, known: readonly number[], wider = 1): { truth: Truth; marks: KnownMark[] } {
  const truth = drawTruth(targetPriors, random);
  return { truth, marks: known.map((distance) => shotIn(truth, distance, targetPriors, random, wider)) };
}

export const MARKS_COVERAGE = 'Sight marks, coverage of a mark shot later';

function coverage(known: readonly number[], wider: number, bound: Bound | null): Figure {
  const name = (distance: number): string =>
    `${MARKS_COVERAGE}: ${words(known)}, asked at ${distance} m${wider === 1 ? '' : `, arrows ${wider} times as wide as held`}`;
  const bounds = Object.fromEntries(asked.map((distance) => [name(distance), bound]));
  return shares(`${MARKS_COVERAGE} ${words(known)} ${wider}`, DRAWS, bounds, (random) => {
    const { truth, marks } = shotSet(random, known, wider);
    const fit = fitted(marks);
    return Object.fromEntries(
      asked.map((distance) => {
        const { reading } = shotIn(truth, distance, targetPriors, random, wider);
        const band = readingAt(fit, distance);
        return [name(distance), band !== null && band.low <= reading && reading <= band.high];
      }),
    );
  });
}

const blamed = ({ judged }: FittedMarks): readonly number[] =>
  judged.filter(({ verdict }) => verdict === 'does not fit').map(({ distance }) => distance);

/** How often a mark is said not to fit where all are well. */
const falseBlame = (known: readonly number[]): Figure =>
  share(`Sight marks, false alarms: ${words(known)}`, DRAWS, [0, 0.07], (random) => {
    const fit = fitted(shotSet(random, known).marks);
    return fit.judged.some(({ verdict }) => verdict === 'does not fit' || verdict === 'one of these');
  });

/** How often one that was read off wrongly is named, and it alone; and how often another one is. */
function found(known: readonly number[], errors: number): Figure {
  const at = known[Math.floor(known.length / 2)] as number;
  const name = (what: string): string =>
    `Sight marks, one read off wrongly: ${words(known)}, that at ${at} m by ${errors} standard errors, ${what}`;
  return shares(name(''), DRAWS / 5, { [name('named')]: null, [name('another named')]: [0, 0.03] }, (random) => {
    const { marks } = shotSet(random, known);
    const off = 1000 * errors * markError(targetPriors, usualShots);
    const misread = marks.map((mark) => (mark.distance === at ? { ...mark, reading: mark.reading + off } : mark));
    // Marks that no flight can have are refused with a sentence: then none is named.
    const fit = fitMarks(misread, millimetreScale, targetPriors);
    const names = fit.ok ? blamed(fit.value) : [];
    return { [name('named')]: names.length === 1 && names[0] === at, [name('another named')]: names.some((one) => one !== at) };
  });
}

export const marksFigures: readonly Figure[] = [
  ...sets.map((known) => coverage(known, 1, WANTED)),
  ...[sets[2], sets[4]].map((known) => coverage(known ?? [], 1.5, null)),
  ...sets.filter(({ length }) => length > 1).map(falseBlame),
  ...[4, 6, 10].flatMap((errors) => [sets[3], sets[4], sets[5]].map((known) => found(known ?? [], errors))),
];
