import { woodPounds } from '../../../core/arrow/index.ts';
import { countWord, together } from '../../../core/model/sentence.ts';
import type { UnitChoice } from '../../../core/model/preferences.ts';
import { beyondReach, type Move, type Suitability, type Verdict } from '../../../core/suitability/index.ts';
import { factorOf, textQuantity, unitOf } from '../../../core/units/index.ts';
import { spineScale, type SpineScale } from '../../plots/spine/axis.ts';
import type { ShaftMark, SpineView } from '../../plots/spine/marks.ts';

const levels: Readonly<Record<Verdict, SpineView['level']>> = {
  'in range': 'ok',
  stiff: 'caution',
  weak: 'caution',
  'cannot tell': 'unknown',
};

/** What one view says of the shaft: its verdict, and how far outside when it is outside. */
function saysOf({ needed, verdict }: Suitability['views'][number], measured: number, units: UnitChoice): string {
  const outside = verdict === 'weak' ? measured - needed.high : verdict === 'stiff' ? needed.low - measured : 0;
  return outside > 0 ? `${verdict} by ${textQuantity(outside, 'deflection', units)}` : verdict;
}

/** The views that speak, as bands on the one spine axis. A view outside its domain says nothing there. */
export const spineViews = ({ views, margin }: Suitability, units: UnitChoice): readonly SpineView[] =>
  views.map((view) => ({
    name: view.name,
    needed: view.needed,
    says: saysOf(view, margin.measured, units),
    level: levels[view.verdict],
  }));

/** "Two views of what this bow wants" */
export const viewsTitle = (count: number): string => {
  const word = countWord(count);
  return count === 1 ? 'What this bow wants' : `${word.charAt(0).toUpperCase()}${word.slice(1)} views of what this bow wants`;
};

/** This shaft on the axis. */
export function shaftMark({ margin: { measured, low, high } }: Suitability, units: UnitChoice): ShaftMark {
  const text = textQuantity(measured, 'deflection', units);
  const band = high > low ? `, ${textQuantity(low, 'deflection', units)} to ${textQuantity(high, 'deflection', units)}` : '';
  return {
    value: measured,
    low,
    high,
    text: `this shaft, ${text}${band}`,
    wood: `${text} = ${woodPounds(measured, '28 in, 880 g').toFixed(0)} lb wood`,
  };
}

/** One axis for the views, the shaft and the moves. */
export function axisOf({ views, margin }: Suitability, moves: readonly Move[], width: number, units: UnitChoice): SpineScale {
  const deflections = [
    margin.low,
    margin.high,
    ...views.flatMap(({ needed }) => [needed.low, needed.high]),
    ...moves.map(({ actsLike }) => actsLike),
  ];
  return spineScale(deflections, width, factorOf('deflection', units), unitOf('deflection', units));
}

/** The moves that are drawn: one that may not be done is told as long as somebody might think of it, and not far beyond. */
export const movesInReach = (moves: readonly Move[]): readonly Move[] =>
  moves.filter((move) => move.stopped === null || !beyondReach(move));

/** What is left when the moves that nobody would make are left out; null when each kind still has one. */
export function outOfReach(moves: readonly Move[]): string | null {
  const drawn = new Set(movesInReach(moves).map(({ what }) => what));
  const names = { point: 'no point', length: 'no arrow length', weight: 'no draw weight', shaft: 'no shaft' } as const;
  const missing = new Set(moves.filter(({ what }) => !drawn.has(what)).map(({ what }) => names[what]));
  if (missing.size === 0) return null;
  const words = together([...missing]);
  return `${words.charAt(0).toUpperCase()}${words.slice(1)} within reach would centre it.`;
}

/** A change in the trade's words: "point 85 gr", "1/2 in shorter", "bow 2 lb lighter", "another shaft". */
export function moveName({ what, from, to, use }: Move, units: UnitChoice): string {
  const by = textQuantity(Math.abs(to - from), use, units);
  switch (what) {
    case 'point':
      return `point ${textQuantity(to, use, units)}`;
    case 'length':
      return `${by} ${to < from ? 'shorter' : 'longer'}`;
    case 'weight':
      return `bow ${by} ${to < from ? 'lighter' : 'heavier'}`;
    case 'shaft':
      return 'another shaft';
  }
}

export const actsText = ({ actsLike, what }: Move, units: UnitChoice): string =>
  `${what === 'shaft' ? 'of' : 'acts like'} ${textQuantity(actsLike, 'deflection', units)}`;

/** How far a change gets the shaft. */
export function reachText({ reaches, stopped }: Move): string {
  if (stopped !== null) return 'not to be done';
  return { middle: 'to the middle', edge: 'into the range', not: 'not far enough' }[reaches];
}
