import type { UnitChoice } from '../../../core/model/preferences.ts';
import { refuse, type Result } from '../../../core/model/problem.ts';
import { acrossText } from '../../../core/trials/index.ts';
import type { PlaceTyped } from '../groups/entry/TypedShot.tsx';
import { typedPlace } from '../groups/entry/typedPlace.ts';

/** "15", "15r", "12 l", "−12": how far to the right or left of the plumb line. */
const SIDED = /^(.*\S)\s*([rl])$/iu;

/** A place beside the plumb line: a lone figure is across, since the height does not count; a second one is the height all the same. */
export function acrossPlace(text: string, units: UnitChoice): Result<{ readonly x: number; readonly y: number }> {
  const whole = typedPlace(text, units);
  if (whole.ok) return whole;
  const [, figure = text.trim(), side = 'r'] = SIDED.exec(text.trim()) ?? [];
  const lone = typedPlace(`${side.toLowerCase() === 'l' ? '-' : ''}${figure}; 0`, units);
  if (lone.ok || lone.problem.code === 'too-far') return lone;
  return refuse(
    'one-figure',
    `How far right of the plumb line was expected, as in 15 or 15r, and 12l to its left (${units.setting}).`,
  );
}

/** For those who measure from the plumb line with a rule: one figure and Enter. */
export const fromPlumb: PlaceTyped = {
  read: acrossPlace,
  asks: ({ setting }) => `across and up from the centre, ${setting}; across alone will do`,
  example: '15r, 12l',
  told: ({ x }, units) => `${acrossText(x, units)} ${x < 0 ? 'left' : 'right'} of the plumb line`,
};
