import { keepShooting, plannedLooks, type Boundary, type EndPair } from '../../core/group/index.ts';
import type { Random } from '../../fixtures/random.ts';
import { meanRow, share, shareRow, type Bound, type Figure } from './row.ts';
import { across, needle, oval, round, shots, student, wider, type Scatter } from './scatter.ts';

const DRAWS = 5000;
const WANTED: Bound = [0, 0.05];
const LOOKS = 12;

interface Plan {
  /** Arrows of each end, taken in turn: with and without the change. */
  readonly ends: readonly (readonly [number, number])[];
  readonly first: Scatter;
  readonly second: Scatter;
  readonly words: string;
}

const alike = (ends: Plan['ends'], scatter: Scatter, words = scatter.words): Plan => ({
  ends,
  first: scatter,
  second: scatter,
  words,
});
const threes: Plan['ends'] = [[3, 3]];

function endsOf(random: Random, { ends, first, second }: Plan, looks: number, shift = 0): EndPair[] {
  return Array.from({ length: looks }, (_, i) => {
    const [a, b] = ends[i % ends.length] ?? [3, 3];
    return { reference: shots(random, a, first), moved: shots(random, b, second, shift) };
  });
}

const sizes = ({ ends }: Plan): string => ends.map(([a, b]) => `${a} + ${b}`).join(', then ');

/** A look after every end, shooting on whatever was said: whether any of the looks calls a shift that is not there. */
const falseStop = (plan: Plan, looks = LOOKS): Figure =>
  share(`Stopping, false alarms: ${looks} looks, ends of ${sizes(plan)}, ${plan.words}`, DRAWS, WANTED, (random) => {
    const result = keepShooting(endsOf(random, plan, looks));
    return result.ok && result.value.looks.some((look) => look.share >= 1);
  });

const falsePlanned = (planned: number, boundary: Boundary, plan: Plan): Figure =>
  share(
    `Planned looks, false alarms: ${planned} looks, ${boundary}, ends of ${sizes(plan)}, ${plan.words}`,
    // Each look asks the whole shift test, so that a draw is dear.
    (2 * DRAWS) / 5,
    null,
    (random) => {
      const result = plannedLooks(endsOf(random, plan, planned), planned, boundary);
      return result.ok && result.value.stop === 'real';
    },
  );

/** How often a shift is found within so many ends, and after how many on average. */
const found = (shift: number, looks: number): Figure => {
  const name = `Stopping, found: ${shift} spreads, at most ${looks} ends of 3 + 3`;
  return {
    name,
    draws: DRAWS / 4,
    rows: (random, draws) => {
      const at: number[] = [];
      for (let i = 0; i < draws; i++) {
        const result = keepShooting(endsOf(random, alike(threes, round), looks, shift));
        if (result.ok && result.value.stop === 'real' && result.value.at !== null) at.push(result.value.at);
      }
      return [shareRow(name, at.length, draws), ...(at.length > 1 ? [meanRow(`${name}, ends shot when found`, at)] : [])];
    },
  };
};

export const FALSE_STOP = 'Stopping, false alarms';

export const stoppingFigures: readonly Figure[] = [
  falseStop(alike(threes, round)),
  falseStop(alike(threes, round), 24),
  falseStop(alike(threes, oval(2))),
  falseStop(alike(threes, oval(5))),
  falseStop(alike(threes, needle)),
  falseStop(alike(threes, student(5))),
  falseStop(alike(threes, student(3))),
  falseStop({ ends: threes, first: round, second: wider(round, 2), words: 'round, spreads 1 to 2' }),
  falseStop({ ends: threes, first: oval(5), second: wider(across(oval(5)), 3), words: 'oval 5 to 1, crossed, spreads 1 to 3' }),
  falseStop(alike([[2, 1]], round)),
  falseStop(alike([[6, 3]], round)),
  falseStop({ ends: [[3, 1]], first: round, second: wider(round, 3), words: 'round, spreads 1 to 3' }),
  falseStop({ ends: [[6, 2]], first: oval(5), second: wider(oval(5), 2), words: 'oval 5 to 1, spreads 1 to 2' }),
  falseStop(
    alike(
      [
        [6, 6],
        [3, 3],
        [1, 1],
      ],
      round,
    ),
  ),
  falseStop({
    ends: [
      [6, 3],
      [3, 6],
    ],
    first: round,
    second: wider(round, 2),
    words: 'round, spreads 1 to 2',
  }),
  ...(['pocock', 'obrien-fleming'] as const).flatMap((boundary) => [
    falsePlanned(4, boundary, alike(threes, round)),
    falsePlanned(4, boundary, alike(threes, oval(5))),
    falsePlanned(8, boundary, alike([[6, 6]], round)),
  ]),
  found(1, LOOKS),
  found(1.5, LOOKS),
  found(2, LOOKS),
];
