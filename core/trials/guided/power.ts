import { arrowsToTell, powerForShift, ratioTold, shiftTold, smallestShiftFound } from '../../group/index.ts';
import type { UnitChoice } from '../../model/preferences.ts';
import type { TrialPlan } from '../../model/trial.ts';
import { textQuantity } from '../../units/index.ts';
import { acrossText, countText } from '../words.ts';
import { usualTearText } from './disputed.ts';
import { EACH_OF_TWO } from './eachOfTwo.ts';
import { errorsFound } from './foundBy.ts';
import { spreadSentence } from './archerSpread.ts';
import type { SpreadAt, TrialInput } from './types.ts';
import { walkBackFinds } from './walkBackFinds.ts';

/** What a plan can show and what it cannot, before the first arrow. */
export interface CanShow {
  readonly can: readonly string[];
  readonly cannot: readonly string[];
}

const POWER = 0.8;
const ALPHA = 0.05;

/**
 * What so many arrows can show four times in five, and what they cannot.
 *
 * @equation shifts by shiftTold, one axis by errorsFound, spreads by ratioTold of the test that reads them, for A against B both at half of that since it asks both, slant and bend of a walk-back by walkBackFinds, a touch by 1 - 0.05^(1/n); each times the archer's own spread at the distance
 * @param input - the trial with its plan [record]
 * @param spread - the archer's spread, or a guess that says so [record]
 * @returns sentences [list]
 * @validity round normal shots of one spread; plans, not promises
 * @source johnson-kotz-balakrishnan-1995
 * @example planShows(exampleTrialInput, exampleTrialInput.spread).can[0] // "At 18 m, 6 fletched and 4 bare show a shift of 43 mm (2.4 spreads) four times in five."
 */
export function planShows(input: Pick<TrialInput, 'trial' | 'units'>, spread: SpreadAt): CanShow {
  const { plan, trial } = input.trial;
  const { units } = input;
  switch (trial) {
    case 'bare shaft':
      return shifts(plan, spread, units, ['fletched', 'bare']);
    case 'a against b':
      return both(
        shifts(plan, spread, units, ['of A', 'of B'], EACH_OF_TWO),
        sizes(plan.ends * Math.min(plan.arrows, plan.others), 'group', EACH_OF_TWO),
      );
    case 'nocking point':
      return plan.others > 0 ? heights(plan, spread, units) : sizes(plan.ends * plan.arrows, 'row');
    case 'brace height':
      return both(sizes(plan.ends * plan.arrows, 'group'), {
        can: [
          'Arrow speed against brace height needs far fewer arrows than group size: three at each height over a chronograph.',
        ],
        cannot: ['The quietest height, and the shock in the hand: those are the archer\u2019s to judge.'],
      });
    case 'walk-back':
      return walkBackShows(plan, spread, units);
    case 'paper tear':
      return {
        can: ['A tear in height longer than a shaft is thick, and gross errors to the side.'],
        cannot: [
          `Stiff or weak from a tear to the side of up to ${usualTearText(units)}: a finger-released arrow is flexing as it passes.`,
          ...(plan.ends * plan.arrows < 3 ? ['How steady a tear is: at least three shots at each distance show that.'] : []),
        ],
      };
    case 'clearance': {
      const shots = plan.ends * plan.arrows;
      return {
        can: [
          `${countShots(shots)} without a mark show that it touches in fewer than ${touchAtMost(shots)} of 100 shots, 19 times in 20.`,
        ],
        cannot: ['A light touch that leaves no mark, and one that comes with a loose that these shots did not have.'],
      };
    }
  }
}

const countShots = (shots: number): string => (shots === 1 ? 'One shot' : `${shots} shots`);
const touchAtMost = (shots: number): number => Math.ceil(100 * (1 - 0.05 ** (1 / shots)));

const both = (a: CanShow, b: CanShow): CanShow => ({ can: [...a.can, ...b.can], cannot: [...a.cannot, ...b.cannot] });

const spreads = (d: number): string => `${d < 9.95 ? d.toFixed(1) : d.toFixed(0)} spreads`;

function shifts(plan: TrialPlan, spread: SpreadAt, units: UnitChoice, names: readonly [string, string], alpha = ALPHA): CanShow {
  const [n1, n2] = [plan.ends * plan.arrows, plan.ends * plan.others];
  if (Math.min(n1, n2) < 2)
    return {
      can: [],
      cannot: [`Anything at all: at least two arrows of each were expected, better six ${names[0]} and four ${names[1]}.`],
    };
  const d = shiftTold(n1, n2, POWER, alpha);
  if (d === null)
    return {
      can: [],
      cannot: [
        `Any shift but the grossest: with two arrows of one kind not even one of nine spreads shows four times in five. Better six ${names[0]} and four ${names[1]}; repeat the ends before you turn anything.`,
      ],
    };
  // Half of what the best test of round groups finds: the default test loses about as much of either.
  const half = Math.round(100 * powerForShift(smallestShiftFound(n1, n2, POWER, alpha) / 2, n1, n2, alpha));
  const rests = spreadSentence(spread, plan.distances.at(-1) ?? 18, units);
  return {
    can: [
      ...plan.distances.map(
        (z) =>
          `At ${textQuantity(z, 'distance', units)}, ${n1} ${names[0]} and ${n2} ${names[1]} show a shift of ${acrossText(d * spread.perMetre * z, units)} (${spreads(d)}) four times in five.`,
      ),
      rests,
    ],
    cannot: [
      `A shift half as large, usually: at one distance it is found ${half} times in 100.`,
      ...(d > 3 ? ['Anything but a gross shift: repeat the ends before you turn anything.'] : []),
    ],
  };
}

function sizes(n: number, what: 'group' | 'row', alpha = ALPHA): CanShow {
  if (n < 3)
    return { can: [], cannot: [`Which ${what} is tighter: at least three arrows of each were expected, better twelve.`] };
  // A row counts its height alone.
  const axes = what === 'row' ? 1 : 2;
  const told = ratioTold(n, n, POWER, alpha, axes);
  const fifth = `a fifth takes about ${countText(arrowsToTell(0.8, POWER, alpha, axes))} arrows of each.`;
  if (told === null)
    return {
      can: [],
      cannot: [
        `Which ${what} is tighter: ${n} and ${n} arrows miss even one ten times as wide as the other more than once in five. Better twelve of each; ${fifth}`,
      ],
    };
  return {
    can: [
      `Beside each other, ${n} and ${n} arrows show one ${what} ${(1 / told).toFixed(1)} times as wide as the other four times in five.`,
    ],
    cannot: [`A milder difference in size usually escapes them; ${fifth}`],
  };
}

function heights(plan: TrialPlan, spread: SpreadAt, units: UnitChoice): CanShow {
  const [n1, n2] = [plan.ends * plan.arrows, plan.ends * plan.others];
  if (Math.min(n1, n2) < 2) return { can: [], cannot: ['Anything at all: at least two arrows of each kind were expected.'] };
  const d = errorsFound(n1 + n2 - 2) * Math.sqrt(1 / n1 + 1 / n2);
  const z = plan.distances[0] ?? 18;
  return {
    can: [
      `At one nocking point, ${n1} fletched and ${n2} bare show that they differ in height by ${acrossText(d * spread.perMetre * z, units)} (${spreads(d)}) four times in five.`,
      spreadSentence(spread, z, units),
    ],
    cannot: ['How far a bare shaft moves for a step of the nocking point is not known before it is shot.'],
  };
}

function walkBackShows(plan: TrialPlan, spread: SpreadAt, units: UnitChoice): CanShow {
  const found = walkBackFinds(plan);
  if (found === null)
    return {
      can: [],
      cannot: ['A line at all: at least three distances and four arrows were expected, better five or six distances.'],
    };
  const far = Math.max(...plan.distances);
  const at = textQuantity(far, 'distance', units);
  const size = (perSpread: number) => acrossText(perSpread * spread.perMetre * far, units);
  return {
    can: [
      `A slant that carries the arrows ${size(found.slant)} to the side at ${at}, four times in five.`,
      `A bend of ${size(found.bow)} off the straight between nearest and farthest, four times in five.`,
      spreadSentence(spread, far, units),
    ],
    cannot: [
      'Whether a slant comes from the button, the rest, the sight\u2019s windage or a canted bow: the line alone cannot tell.',
    ],
  };
}
