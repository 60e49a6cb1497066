import { flyersOf, looseArrows, oddArrows, type EndShot } from '../../core/group/index.ts';
import type { Random } from '../../fixtures/random.ts';
import { numberedEnds } from './power.ts';
import { share, type Bound, type Figure } from './row.ts';
import { onFace, oval, round, shots, student, type Scatter } from './scatter.ts';

const DRAWS = 4000;
const WANTED: Bound = [0, 0.08];

type Offset = readonly [number, number];

/** Sets in which an arrow that strikes with the others is called odd. */
function accused(k: number, ends: number, odd: readonly Offset[], scatter: Scatter, words: string, thin = thinNothing): Figure {
  const offsets = Array.from({ length: k }, (_, i): Offset => odd[i] ?? [0, 0]);
  return share(
    `Odd arrow, a good one accused: ${k} arrows, ${ends} ends, ${words}, ${scatter.words}`,
    DRAWS,
    WANTED,
    (random) => {
      const result = oddArrows(thin(random, numberedEnds(random, ends, offsets, [scatter])));
      return result.ok && result.value.odd.some(({ arrow }) => arrow > odd.length);
    },
  );
}

const thinNothing = (_: Random, shot: EndShot[]): EndShot[] => shot;
/** One shot in five has no arrow number. */
const thinned = (random: Random, shot: EndShot[]): EndShot[] => shot.filter(() => random() > 0.2);

const none = 'none odd';
const one: readonly Offset[] = [[2, 0]];
const alongside: readonly Offset[] = [
  [2, 0],
  [2, 0],
];
const opposite: readonly Offset[] = [
  [2, 0],
  [-2, 0],
];

const falseLoose = (k: number, ends: number, scatter: Scatter): Figure =>
  share(`Loose arrow, false alarms: ${k} arrows, ${ends} ends, ${scatter.words}`, DRAWS / 4, null, (random) => {
    const offsets = Array.from({ length: k }, (): Offset => [0, 0]);
    const result = looseArrows(numberedEnds(random, ends, offsets, [scatter]));
    return result.ok && result.value.loose !== null;
  });

/** A past spread as past groups would have given it, with as many degrees of freedom. */
function past(random: Random, df: number): { spread: number; df: number } {
  let sum = 0;
  for (const { x, y } of shots(random, df / 2, round)) sum += x * x + y * y;
  return { spread: Math.sqrt(sum / df), df };
}

/** Groups without a flyer in which one is named, or those in which the planted one is. */
function flyers(n: number, df: number | null, scatter: Scatter, at: number, words: string): Figure {
  const by = df === null ? 'by these shots' : `by a history of ${df} degrees of freedom`;
  return share(`Flyers, ${words}: ${n} shots, ${by}, ${scatter.words}`, 2 * DRAWS, null, (random) => {
    const points = shots(random, n, scatter);
    const first = points[0];
    if (at > 0 && first !== undefined) points[0] = { x: onFace(at), y: 0 };
    const result = flyersOf(points, df === null ? null : past(random, df));
    if (!result.ok) throw new Error('These shots can be judged.');
    return at > 0 ? result.value.shots[0]?.flyer === true : result.value.shots.some(({ flyer }) => flyer);
  });
}

export const ACCUSED = 'Odd arrow, a good one accused';

export const oddFigures: readonly Figure[] = [
  ...[round, oval(2), oval(5), student(5), student(3)].flatMap((scatter) => [
    accused(6, 3, [], scatter, none),
    accused(6, 6, [], scatter, none),
    accused(12, 4, [], scatter, none),
  ]),
  accused(3, 6, one, round, 'one 2 spreads off'),
  accused(6, 6, one, round, 'one 2 spreads off'),
  accused(12, 6, one, round, 'one 2 spreads off'),
  accused(6, 6, one, oval(2), 'one 2 spreads off'),
  accused(6, 6, one, student(3), 'one 2 spreads off'),
  accused(6, 4, alongside, round, 'two 2 spreads off the same way'),
  accused(6, 6, alongside, round, 'two 2 spreads off the same way'),
  accused(6, 10, alongside, round, 'two 2 spreads off the same way'),
  accused(6, 6, alongside, oval(2), 'two 2 spreads off the same way'),
  accused(6, 6, alongside, student(3), 'two 2 spreads off the same way'),
  accused(12, 6, alongside, round, 'two 2 spreads off the same way'),
  accused(6, 6, opposite, round, 'two 2 spreads off opposite ways'),
  accused(6, 6, one, round, 'one 2 spreads off, one shot in five not noted', thinned),
  falseLoose(6, 8, round),
  falseLoose(12, 8, round),
  falseLoose(6, 8, oval(5)),
  falseLoose(6, 8, student(5)),
  ...[3, 6, 12].flatMap((n) => [null, 22, 70].map((df) => flyers(n, df, round, 0, 'named without any'))),
  ...[null, 70].map((df) => flyers(6, df, student(5), 0, 'named without any')),
  ...[3, 6, 12].flatMap((n) => [null, 70].map((df) => flyers(n, df, round, 4, 'found 4 spreads out'))),
];
