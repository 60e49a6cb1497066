import type { Bundle } from '../model/bundle.ts';
import type { UnitChoice } from '../model/preferences.ts';
import { ok, refuse, type Result } from '../model/problem.ts';
import { heavierWeight } from '../bow/index.ts';
import { braceStanding } from '../findings/braceHeight.ts';
import { leastMassPerWeight, pointAheadCheck, standingStops } from '../safety/index.ts';
import { grain } from '../units/exact.ts';
import { textQuantity } from '../units/index.ts';
import type { FigureBand } from './column.ts';
import { changedFigures, neededText, todayOf, type Today } from './cost.ts';
import { weightDoubt, type Doubt } from './doubt.ts';
import type { Move } from './move.ts';
import { movedBundle } from './moved.ts';
import { suitability, type Suitability } from './suitability.ts';
import { waysOf, type Way } from './ways.ts';

const TOO_WIDE = 'What the weight may be is wider than the whole range. Weigh the bow at full draw with a scale first.';

/** The band that is left when a figure may be lower or higher than its value by this much, and the middle in it. */
function target(band: FigureBand, doubt: Doubt): Aim | null {
  const low = band.low / doubt.low;
  const high = band.high / doubt.high;
  if (low > high) return null;
  return { low, high, middle: Math.min(high, Math.max(low, middleOf(band).middle)) };
}

type Aim = FigureBand & { readonly middle: number };

interface Reached {
  /** The first step that is in range, and the one nearest to the middle. */
  readonly edge: number | null;
  readonly best: number;
  readonly reaches: Move['reaches'];
}

const inside = (figure: number, { low, high }: Aim): boolean => figure >= low && figure <= high;

/** The first of so many places where something holds that goes on holding from there; the count when it never does. */
function firstWhere(count: number, holds: (index: number) => boolean): number {
  let [low, high] = [0, count];
  while (low < high) {
    const half = (low + high) >> 1;
    if (holds(half)) high = half;
    else low = half + 1;
  }
  return low;
}

/** Along whole steps toward the middle, and not beyond the one nearest to it; null when the first already leads away. */
function along({ steps, figureAt }: Way, aim: Aim, now: number): Reached | null {
  const weaker = now < aim.middle;
  const figures = new Map<number, number>();
  const at = (index: number): number => {
    const known = figures.get(index) ?? figureAt(steps[index] ?? Number.NaN);
    figures.set(index, known);
    return known;
  };
  const off = (index: number): number => Math.abs((index < 0 ? now : at(index)) - aim.middle);
  const past = firstWhere(steps.length, (index) => (weaker ? at(index) >= aim.middle : at(index) <= aim.middle));
  const passed = past < steps.length;
  const nearest = passed && off(past) < off(past - 1) ? past : past - 1;
  const best = steps[nearest];
  if (best === undefined) return null;
  if (!inside(at(nearest), aim)) return { edge: null, best, reaches: 'not' };
  const edge = firstWhere(nearest, (index) => (weaker ? at(index) >= aim.low : at(index) <= aim.high));
  return { edge: steps[edge] ?? best, best, reaches: passed ? 'middle' : 'edge' };
}

const sentences = (...parts: readonly (string | null)[]): string =>
  parts.filter((part) => part !== null && part !== '').join(' ');

const lowered = (sentence: string): string => sentence.charAt(0).toLowerCase() + sentence.slice(1);

const middleOf = ({ low, high }: FigureBand): Aim => ({ low, high, middle: (low + high) / 2 });

/**
 * What would bring the shaft to the middle of what the load on it needs: another point, a shorter shaft, other draw weight, another shaft.
 *
 * @equation whole steps of 5 gr, 1/2 in and 1 lb until C = F L²/(EI c(r)) is in its band, and to the step nearest its middle; another shaft by δ = δ_now C_middle/C
 * @param bundle - the set-up with its records [record]
 * @param units - the person's choice of units, for the sentences [record]
 * @returns the moves, in the order of the trade: from and to [SI], what the shaft would act like [m], how far it reaches, its cost, and why it may not be done [list]
 * @validity refused while a stop stands, a brace height outside the maker's range among them, and where suitability cannot tell; a way that may not be taken far enough says so; in range only what reaches the middle is told; no size is asserted but by the column view, whose band is from memory
 * @source own derivation
 * @example whatWouldCentre({ ...exampleBundle, arrowSet: { ...exampleBundle.arrowSet, deflection: 0.016 } }, defaultPreferences.units).value[0].what // "point"
 */
export function whatWouldCentre(bundle: Bundle, units: UnitChoice): Result<readonly Move[]> {
  // A brace height outside the maker's range stops the shooting too, and moves the load on the shaft.
  if (standingStops(bundle).length > 0 || braceStanding(bundle).level === 'stop')
    return refuse('stopped', 'Nothing is offered while a stop stands: see the findings.');
  const answer = suitability({ ...bundle, settings: bundle.setup.settings });
  if (!answer.ok) return answer;
  const found = answer.value;
  if (found.verdict === 'cannot tell') return refuse('cannot tell', found.why ?? TOO_WIDE);
  const weaker = found.margin.value < 0;
  const today = todayOf(bundle);
  const moves = waysOf(bundle, found, weaker, units).flatMap((way) => movesOf(bundle, today, found, way, units));
  return ok(
    found.verdict === 'in range'
      ? moves.filter(({ stopped, reaches }) => stopped === null && reaches === 'middle')
      : [...moves, anotherShaft(bundle, found, units)],
  );
}

function movesOf(bundle: Bundle, today: Today, found: Suitability, way: Way, units: UnitChoice): readonly Move[] {
  const { column, margin } = found;
  const move = (to: number, reaches: Move['reaches'], stopped: string | null, further: string | null = null): Move => ({
    what: way.what,
    from: way.from,
    to,
    use: way.use,
    actsLike: (margin.measured * way.figureAt(to)) / column.figure,
    reaches,
    cost: sentences(
      changedFigures(today, movedBundle(bundle, { what: way.what, to }), way.what === 'weight' ? to / way.from : 1, units),
      ...(stopped === null ? way.afterwards : []),
      further === null ? null : `No further: ${lowered(further)}`,
    ),
    stopped,
  });
  const aim = target(column.band, way.doubt);
  const wanted = along(way, aim ?? middleOf(column.band), column.figure);
  if (wanted === null) return [];
  const { best, edge, reaches } = wanted;
  if (aim === null) return [move(best, 'not', TOO_WIDE)];
  const upTo = way.steps.slice(0, way.steps.indexOf(best) + 1);
  const barrierAt = (index: number): string | null => way.barrier(upTo[index] ?? best);
  const barred = firstWhere(upTo.length, (index) => barrierAt(index) !== null);
  const [last, further] = barred === upTo.length ? [best, null] : [upTo[barred - 1], barrierAt(barred)];
  if (last === undefined) return [move(best, reaches, further)];
  const whole = last === best ? reaches : inside(way.figureAt(last), aim) ? 'edge' : 'not';
  // A point is screwed out and back in: the smallest that will do is told as well.
  const smallest = way.what === 'point' && edge !== null && edge !== last && whole !== 'not' && !inside(column.figure, aim);
  return [...(smallest ? [move(edge, 'edge', null)] : []), move(last, whole, null, further)];
}

const LENGTH_FIRST = 'Whether arrows of this length are long enough is not settled: see the findings first.';

/** A weaker shaft is mostly a lighter one: what the whole arrow must weigh, in whole grains. */
function leastArrow({ archer, bow, setup }: Bundle, units: UnitChoice): string | null {
  const least = leastMassPerWeight(bow);
  const weight = heavierWeight(bow, archer, setup.settings);
  if (least === null || !weight.ok) return null;
  const mass = Math.max(least.caution * weight.value.value, least.stop * weight.value.high);
  return `The whole arrow must weigh ${textQuantity(Math.ceil(mass / grain) * grain, 'mass', units)} or more.`;
}

/** Needed as any tester reads it, for arrows of this length and point. */
function anotherShaft(bundle: Bundle, { column, margin, weight }: Suitability, units: UnitChoice): Move {
  const { archer, arrowSet, setup } = bundle;
  const reach = { arrowLength: arrowSet.length, drawLength: archer.drawLength, measured: setup.settings.pointAhead };
  const long = pointAheadCheck(archer, reach).level === 'in range';
  const aim = target(column.band, weightDoubt(weight));
  const { low, high, middle } = aim ?? middleOf(column.band);
  const deflectionAt = (figure: number) => (margin.measured * figure) / column.figure;
  const needed = neededText({ low: deflectionAt(low), high: deflectionAt(high) }, arrowSet.material === 'wood', units);
  return {
    what: 'shaft',
    from: margin.measured,
    to: deflectionAt(middle),
    use: 'deflection',
    actsLike: deflectionAt(middle),
    reaches: aim === null ? 'not' : 'middle',
    cost: sentences(
      `New shafts of this length and point: ${needed}.`,
      leastArrow(bundle, units),
      'Their own mass shifts it a little: weigh one, and look again.',
    ),
    stopped: aim === null ? TOO_WIDE : long ? null : LENGTH_FIRST,
  };
}
