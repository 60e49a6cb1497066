import type { Band } from '../model/band.ts';
import type { UnitChoice } from '../model/preferences.ts';
import { sources } from '../sources.ts';
import { yard } from '../units/exact.ts';
import { showQuantity, textQuantity } from '../units/index.ts';
import type { Finding } from './finding.ts';
import { whyRule } from './parts.ts';
import { waitingFor } from './waiting.ts';

/** A national rule of 2014 for finger-shot bows: up to 60 yd the overshoot line lies 110 yd from the shooting line, beyond it 50 yd behind the target. */
const ruleYd = { near: 60, line: 110, behind: 50 } as const;

/**
 * How far an arrow could fly at worst, beside the rule for the ground beyond the target.
 *
 * @equation always a caution, with the greatest reach at any angle beside 110 yd, or target + 50 yd beyond 60 yd
 * @param reach - greatest distance at any angle, computed from the trajectory; null while the speed is not known [m]
 * @param distance - distance to the farthest target [m]
 * @param units - the person's choice of units [record]
 * @returns the finding [record]
 * @validity level ground; never in range, since an overshoot line beyond the reach makes no loose high shot harmless; the local range rules govern and the rule book's edition must be checked
 * @source british-rule-302
 * @example overshootFinding({ value: 190, low: 170, high: 210 }, 50, defaultPreferences.units).title // "Loosed high, an arrow could fly 210 m"
 */
export function overshootFinding(reach: Band | null, distance: number, units: UnitChoice): Finding {
  if (reach === null)
    return waitingFor(
      'overshoot',
      'How far an arrow could fly: not known',
      'Waits for the arrow\u2019s speed, measured or estimated.',
      'reach',
      'aim',
      'settings.arrowSpeed',
    );
  const text = (si: number) => textQuantity(si, 'distance', units, { digits: 0 });
  const figure = (si: number) => showQuantity(si, 'distance', units, { digits: 0 }).figure;
  // A micrometre keeps 60 yd typed in metres in the first row.
  const clear = distance <= ruleYd.near * yard + 1e-6 ? ruleYd.line * yard : distance + ruleYd.behind * yard;
  return {
    id: 'overshoot',
    level: 'caution',
    title: `Loosed high, an arrow could fly ${text(reach.high)}`,
    detail: `Never draw above the target. One national rule of 2014, for bows shot with the fingers, keeps ${text(clear)} clear from the shooting line; your range\u2019s rules govern.`,
    rule: null,
    short: { figure: text(reach.high), word: 'reach' },
    why: whyRule(
      'The ground beyond the target',
      'The greatest distance that this arrow reaches at any angle, from the same flight as the curve, on level ground in still air. The rule\u2019s overshoot line counts on nobody drawing above the target. Sides are kept clear 10 yd at the line, widening to 20 at 100 yd.',
      [
        ['', 'greatest reach', `${text(reach.value)}, ${figure(reach.low)} to ${text(reach.high)}`],
        ['', 'farthest target', text(distance)],
        ['', 'overshoot line by that rule', text(clear)],
      ],
      sources['british-rule-302'],
    ),
    action: null,
  };
}
