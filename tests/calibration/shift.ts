import { momentsOf, severalCentres, shiftOfGroups, shiftTest, type Point } from '../../core/group/index.ts';
import { share, type Bound, type Figure } from './row.ts';
import { across, needle, oval, round, shots, student, studentEach, wider, type Scatter } from './scatter.ts';

const DRAWS = 40_000;
/** Every so many draws the verdict that people see is asked too: it must be the one that is counted here. */
const ASKED = 1000;

/** Whether the default test calls the shift real. */
export function calledReal(reference: readonly Point[], moved: readonly Point[], alpha = 0.05): boolean {
  return shiftTest(momentsOf(reference), momentsOf(moved)).p < alpha;
}

interface ShiftCase {
  readonly n: readonly [number, number];
  readonly first: Scatter;
  readonly second: Scatter;
  readonly words: string;
}

const alike = (n1: number, n2: number, scatter: Scatter): ShiftCase => ({
  n: [n1, n2],
  first: scatter,
  second: scatter,
  words: scatter.words,
});
/** The second group scatters so many times as wide. */
const unlike = (n1: number, n2: number, scatter: Scatter, by: number): ShiftCase => ({
  n: [n1, n2],
  first: scatter,
  second: wider(scatter, by),
  words: `${scatter.words}, spreads 1 to ${by}`,
});
const crossed = (n1: number, n2: number, scatter: Scatter, by: number): ShiftCase => ({
  n: [n1, n2],
  first: scatter,
  second: wider(across(scatter), by),
  words: `${scatter.words}, crossed${by === 1 ? '' : `, spreads 1 to ${by}`}`,
});

/** The first group scatters round or as is said, the second in an oval so many times as wide as high, and that so many times as wide again. */
const beside = (n1: number, n2: number, ratio: number, by: number, first = round): ShiftCase => ({
  n: [n1, n2],
  first,
  second: wider(oval(ratio), by),
  words: `${first.words} beside oval ${ratio} to 1${by === 1 ? '' : `, spreads 1 to ${Number(by.toFixed(2))}`}`,
});
/** The ovals lie across each other by so many degrees. */
const turned = (n1: number, n2: number, scatter: Scatter, by: number, degrees: number): ShiftCase => ({
  n: [n1, n2],
  first: scatter,
  second: { ...wider(scatter, by), turn: (degrees * Math.PI) / 180 },
  words: `${scatter.words}, crossed at ${degrees}°, spreads 1 to ${by}`,
});

/** How often a shift that is not there is called real; `alpha` is what the test is told to keep. */
export function falseShift(name: string, { n, first, second, words }: ShiftCase, bound: Bound | null, alpha = 0.05): Figure {
  let asked = 0;
  return share(`${name}: ${n[0]} + ${n[1]}, ${words}`, DRAWS, bound, (random) => {
    const [a, b] = [shots(random, n[0], first), shots(random, n[1], second)];
    const real = calledReal(a, b, alpha);
    if (asked++ % ASKED === 0) {
      const shown = shiftOfGroups(a, b, { alpha });
      if (!shown.ok || (shown.value.verdict === 'real') !== real) throw new Error(`Another verdict is shown: ${words}`);
    }
    return real;
  });
}

/** The cases for which 3 to 6 % are wanted. */
const listed: readonly ShiftCase[] = [
  alike(3, 3, round),
  alike(4, 4, round),
  alike(6, 4, round),
  alike(6, 6, round),
  alike(12, 12, round),
  unlike(6, 6, round, 2),
  unlike(6, 3, round, 2),
  unlike(6, 12, round, 2),
  alike(3, 3, oval(2)),
  alike(6, 6, oval(2)),
  alike(12, 12, oval(2)),
  alike(6, 6, oval(3)),
  alike(6, 6, oval(5)),
  alike(12, 12, oval(5)),
  crossed(6, 6, oval(2), 1),
  alike(6, 6, studentEach(5)),
  alike(3, 3, studentEach(5)),
  alike(6, 6, studentEach(3)),
];

/** The case that was named as worse beforehand, and others that nobody listed. */
const beyond: readonly ShiftCase[] = [
  unlike(6, 3, oval(2), 2),
  alike(12, 3, round),
  alike(24, 3, round),
  unlike(12, 3, round, 2),
  unlike(3, 3, oval(5), 3),
  unlike(6, 3, oval(5), 2),
  unlike(6, 3, oval(5), 3),
  alike(12, 3, oval(5)),
  unlike(12, 3, oval(5), 2),
  alike(3, 3, student(5)),
  alike(3, 3, student(3)),
  alike(6, 6, student(3)),
  alike(12, 12, student(3)),
  unlike(6, 3, student(3), 2),
  alike(3, 3, needle),
  alike(6, 6, needle),
  alike(12, 3, needle),
  alike(24, 3, needle),
  unlike(3, 3, needle, 3),
  unlike(6, 3, needle, 2),
  unlike(12, 3, needle, 2),
  unlike(24, 24, needle, 3),
  crossed(12, 12, oval(2), 2),
  crossed(6, 6, oval(3), 2),
  crossed(6, 6, oval(5), 1),
  crossed(3, 3, oval(5), 1),
  crossed(3, 3, oval(5), 3),
  crossed(6, 6, oval(5), 3),
  crossed(6, 3, oval(5), 2),
  crossed(6, 3, oval(5), 3),
  crossed(12, 12, oval(5), 3),
  crossed(6, 6, needle, 1),
  crossed(6, 3, needle, 3),
  crossed(4, 3, oval(5), 3),
  crossed(4, 4, oval(5), 3),
  crossed(5, 3, oval(5), 2),
  crossed(3, 3, needle, 3),
  crossed(3, 3, needle, 5),
  turned(3, 3, oval(5), 3, 45),
  turned(3, 3, oval(5), 3, 60),
  turned(3, 3, needle, 3, 60),
  turned(4, 3, oval(5), 3, 45),
  turned(6, 3, oval(10), 2, 60),
  beside(3, 3, 5, 1),
  beside(3, 3, 5, 0.8),
  beside(4, 3, 5, 1),
  beside(6, 3, 5, 1),
  beside(6, 3, 5, 0.5),
  beside(12, 3, 5, 1 / 3),
  beside(12, 3, 3, 0.67),
  beside(24, 3, 5, 0.2),
  beside(24, 3, 5, 1 / 3),
  beside(24, 3, 10, 0.2),
  beside(6, 4, 5, 1),
  beside(6, 6, 5, 1),
  beside(12, 6, 5, 0.5),
  beside(24, 12, 5, 0.5),
  alike(2, 2, round),
  crossed(2, 2, needle, 5),
  alike(3, 2, round),
  crossed(3, 2, needle, 5),
  beside(3, 2, 10, 1, oval(2)),
  unlike(6, 2, round, 2),
  crossed(6, 2, needle, 2),
  beside(12, 2, 5, 1 / 3),
  beside(24, 2, 5, 0.2),
];

interface SeveralCase {
  readonly n: readonly number[];
  readonly spreads: readonly number[];
  readonly scatter: Scatter;
}

function falseDifference({ n, spreads, scatter }: SeveralCase, bound: Bound): Figure {
  const words = `${n.join(' + ')}, ${scatter.words}${spreads.every((by) => by === 1) ? '' : `, spreads ${spreads.join(' to ')}`}`;
  const wide = spreads.map((by) => wider(scatter, by));
  return share(`Several centres, false alarms: ${words}`, DRAWS / 2, bound, (random) => {
    const result = severalCentres(n.map((count, i) => shots(random, count, wide[i] ?? scatter)));
    return result.ok && result.value.verdict === 'differ';
  });
}

const sizes: readonly (readonly [readonly number[], readonly number[]])[] = [
  [
    [3, 3, 3],
    [1, 1, 1],
  ],
  [
    [6, 6, 6],
    [1, 1, 1],
  ],
  [
    [3, 6, 12],
    [1, 1, 1],
  ],
  [
    [3, 6, 12],
    [3, 1, 1],
  ],
  [
    [12, 12, 3],
    [1, 1, 3],
  ],
  [
    [3, 3, 3, 3],
    [1, 1, 1, 4],
  ],
  [
    [3, 3, 3, 3, 3, 3],
    [1, 1, 1, 1, 1, 1],
  ],
  [
    [12, 12, 12, 12, 12, 3],
    [1, 1, 1, 1, 1, 3],
  ],
];

export const FALSE_SHIFT = 'Shift, false alarms';
export const FALSE_SHIFT_BEYOND = 'Shift, false alarms beyond the list';

export const shiftFigures: readonly Figure[] = [
  ...listed.map((each) => falseShift(FALSE_SHIFT, each, [0.03, 0.06])),
  ...beyond.map((each) => falseShift(FALSE_SHIFT_BEYOND, each, [0, 0.07])),
  ...[round, oval(2), oval(5), student(3), needle].flatMap((scatter) =>
    sizes.map(([n, spreads]) => falseDifference({ n, spreads, scatter }, [0, 0.07])),
  ),
];
