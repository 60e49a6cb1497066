import { drawWeight } from '../bow/index.ts';
import type { Bundle } from '../model/bundle.ts';
import type { UnitChoice } from '../model/preferences.ts';
import { textQuantity } from '../units/index.ts';
import { fieldOf } from './fieldOf.ts';
import type { Finding } from './finding.ts';
import { goTo, rangeText, whyRule } from './parts.ts';
import { waitingFor } from './waiting.ts';

/**
 * Whether the draw weight on the fingers was measured, or is only estimated from the marked weight.
 *
 * @equation in range when read on a scale; unknown with its band when estimated, and for a compound, whose reading may be what it holds at full draw; waiting when neither can be had
 * @param bundle - the set-up with its records [record]
 * @param units - the person's choice of units [record]
 * @returns the finding [record]
 * @validity as drawWeight of the bow room
 * @source common practice
 * @example weightKnownFinding(exampleBundle, defaultPreferences.units).title // "33 lb on the fingers"
 */
export function weightKnownFinding(bundle: Bundle, units: UnitChoice): Finding {
  const { bow, archer, setup } = bundle;
  const weight = drawWeight(bow, archer, setup.settings);
  if (!weight.ok)
    return waitingFor(
      'weight',
      'Draw weight not known',
      weight.problem.sentence,
      'weight',
      ...fieldOf(weight.problem.field, ['bow', 'settings.weightOnFingers']),
    );
  const { value, low, high, from } = weight.value;
  const measured = from === 'on the fingers';
  // An estimate is not worth a tenth of a pound.
  const text = textQuantity(value, 'weight', units, measured || units.weight === 'kg' ? {} : { digits: 0 });
  const band = rangeText(low, high, 'weight', units, false);
  const compound = bow.bowKind === 'compound';
  const read = compound
    ? 'See that it was read at the peak: what a compound holds at full draw is far less than what drives the arrow.'
    : 'Read on a scale at this draw.';
  const weigh = compound
    ? `${band}, from the marked peak. Weigh it at the peak, not at full draw.`
    : `${band}, from the marked weight. Weigh the bow at full draw.`;
  return {
    id: 'weight',
    level: measured && !compound ? 'ok' : 'unknown',
    title: `${measured ? '' : 'About '}${text} ${compound ? 'at the peak' : 'on the fingers'}${measured ? '' : ', not weighed'}`,
    detail: measured ? read : weigh,
    rule: null,
    short: { figure: text.split(' ')[0] ?? '', word: 'weight' },
    why: whyRule(
      'Weight on the fingers',
      'A reading on a scale at the archer\u2019s own draw beats any estimate. From the marked weight: about 5 to 5.5 % of it for each inch of draw between 26 and 30 in, more where the bow stacks.',
      [
        ['F', 'weight on the fingers', `${text}, ${band}`],
        ['', 'from', from],
      ],
      'common practice',
    ),
    action: measured ? null : goTo('Weigh', 'bow', 'settings.weightOnFingers'),
  };
}
