import { tillerOf } from '../bow/index.ts';
import type { Bundle } from '../model/bundle.ts';
import type { UnitChoice } from '../model/preferences.ts';
import { textQuantity } from '../units/index.ts';
import type { Finding } from './finding.ts';
import { HAIR, goTo, rangeText, ruleOf, standing, whyRule } from './parts.ts';
import { waitingFor } from './waiting.ts';

/** Common practice for the tiller of one kind of bow and hook. */
export interface TillerPractice {
  readonly low: number;
  readonly high: number;
  readonly usual: number;
  readonly who: string;
}

/**
 * The tiller that common practice asks of this bow and hook.
 *
 * @equation longbow +3 to +6 mm; three under even, read to 2 mm; others 0 to +6 mm, +3 mm usual
 * @param bundle - the set-up with its records [record]
 * @returns the range, or null where the trade sets it by trial: string walking, compounds [m]
 * @validity top less bottom, string to limb, measured at equal distances from the ends of the riser
 * @source common practice
 * @example tillerPractice(exampleBundle).high // 0.006
 */
export function tillerPractice(bundle: Bundle): TillerPractice | null {
  const { bow, setup } = bundle;
  if (bow.bowKind === 'compound' || setup.form.hook === 'string walk') return null;
  if (setup.form.hook === 'three under') return { low: -0.002, high: 0.002, usual: 0, who: 'three fingers under' };
  if (bow.bowKind === 'longbow') return { low: 0.003, high: 0.006, usual: 0.0045, who: 'a longbow' };
  return { low: 0, high: 0.006, usual: 0.003, who: setup.form.hook === 'split' ? 'split fingers' : 'a finger release' };
}

/**
 * The tiller against common practice.
 *
 * @equation caution outside the range of tillerPractice, else in range
 * @param bundle - the set-up with its records [record]
 * @param units - the person's choice of units [record]
 * @returns the finding; null where no range holds [record]
 * @validity as tillerPractice
 * @source common practice
 * @example tillerFinding(exampleBundle, defaultPreferences.units).title // "Tiller +3 mm"
 */
export function tillerFinding(bundle: Bundle, units: UnitChoice): Finding | null {
  const practice = tillerPractice(bundle);
  if (practice === null) return null;
  const tiller = tillerOf(bundle.setup.settings);
  if (tiller === null)
    return waitingFor(
      'tiller',
      'Tiller not measured',
      'Waits for the tiller: string to limb, top less bottom.',
      'tiller',
      'bow',
      'settings.tiller',
    );
  const { low, high, who } = practice;
  const stands = standing(tiller, low, high, HAIR);
  const text = textQuantity(tiller, 'setting', units, { signed: true });
  return {
    id: 'tiller',
    level: stands === 'inside' ? 'ok' : 'caution',
    title: `Tiller ${text}${stands === 'inside' ? '' : `, ${stands}`}`,
    detail: `Common practice for ${who}.`,
    rule: ruleOf(tiller, low, high, 'setting', units, true),
    short: { figure: text, word: 'tiller' },
    why: whyRule(
      'Tiller',
      'String to limb at the top less the same at the bottom. Common practice is 0 to +6 mm for a finger release, +3 to +6 mm for a longbow, even for three fingers under; string walkers set it by trial. Draw slowly on a mark: a balanced bow neither climbs nor dives.',
      [
        ['t', 'tiller, top less bottom', text],
        ['', 'range', rangeText(low, high, 'setting', units, true)],
      ],
      'common practice',
    ),
    action: stands === 'inside' ? null : goTo('Fix', 'bow', 'settings.tiller'),
  };
}
