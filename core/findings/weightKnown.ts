import { isWeighed, weightAgainstMark, type DrawWeight } from '../bow/index.ts';
import type { Bundle } from '../model/bundle.ts';
import type { UnitChoice } from '../model/preferences.ts';
import { textQuantity } from '../units/index.ts';
import { fieldOf } from './fieldOf.ts';
import type { Finding } from './finding.ts';
import { knownOf, type Known } from './known.ts';
import { goTo, rangeText, whyRule } from './parts.ts';
import { waitingFor } from './waiting.ts';

/**
 * Whether the draw weight on the fingers was measured, or is only estimated from the marked weight.
 *
 * @equation in range when read on a scale at this draw; a caution when scale and mark contradict each other; unknown with its band when estimated or read at another draw, and for a compound, whose reading may be what it holds at full draw; waiting when neither can be had
 * @param bundle - the set-up with its records [record]
 * @param units - the person's choice of units [record]
 * @param known - what several checks rest on [record]
 * @returns the finding [record]
 * @validity as drawWeight of the bow room
 * @source common practice
 * @example weightKnownFinding(exampleBundle, defaultPreferences.units).title // "33 lb on the fingers"
 */
export function weightKnownFinding(bundle: Bundle, units: UnitChoice, known: Known = knownOf(bundle, units)): Finding {
  const { bow, archer, setup } = bundle;
  const weight = known.weight();
  if (!weight.ok)
    return waitingFor(
      'weight',
      'Draw weight not known',
      weight.problem.sentence,
      'weight',
      ...fieldOf(weight.problem.field, ['bow', 'settings.weightOnFingers']),
    );
  const { value, low, high, from } = weight.value;
  const measured = isWeighed(from);
  const round = (si: number, estimated: boolean) =>
    // An estimate is not worth a tenth of a pound.
    textQuantity(si, 'weight', units, estimated && units.weight !== 'kg' ? { digits: 0 } : {});
  const text = round(value, !measured);
  const band = rangeText(low, high, 'weight', units, false);
  const compound = bow.bowKind === 'compound';
  const expected = weightAgainstMark(bow, archer, setup.settings);
  return {
    id: 'weight',
    level: expected !== null ? 'caution' : measured && !compound ? 'ok' : 'unknown',
    title:
      expected !== null
        ? `${text} read, about ${round(expected.value, true)} by the mark: weigh again`
        : `${measured ? '' : 'About '}${text} ${compound ? 'at the peak' : 'on the fingers'}${from === 'marked weight' ? ', not weighed' : ''}`,
    detail: expected !== null ? CONTRADICTED : compound ? compoundDetail(measured, band) : detailOf(bundle, from, band, units),
    rule: null,
    short: { figure: text, word: 'weight' },
    why: whyRule(
      'Weight on the fingers',
      'A reading on a scale at the archer\u2019s own draw beats any estimate, and it holds for that draw only. Carried to another draw, or from the marked weight: about 5 to 5.5 % for each inch of draw between 26 and 30 in, more where the bow stacks.',
      [
        ['F', 'weight on the fingers', `${text}, ${band}`],
        ...(expected === null ? [] : [['', 'expected from the mark', round(expected.value, true)] as const]),
        ['', 'from', words[from]],
      ],
      'common practice',
    ),
    action: measured && expected === null ? null : goTo('Weigh', 'bow', 'settings.weightOnFingers'),
  };
}

const words: Readonly<Record<DrawWeight['from'], string>> = {
  'on the fingers': 'a scale, at this draw',
  'read on the scale': 'the force-draw readings, at this draw',
  'at another draw': 'a scale, at another draw',
  'marked weight': 'the marked weight',
};

const CONTRADICTED =
  'Scale, mark or draw: one is wrong. Until that is settled the arrow\u2019s mass is judged by the heavier of the two.';

const compoundDetail = (measured: boolean, band: string): string =>
  measured
    ? 'See that it was read at the peak: what a compound holds at full draw is far less than what drives the arrow.'
    : `${band}, from the marked peak. Weigh it at the peak, not at full draw.`;

function detailOf({ archer, setup }: Bundle, from: DrawWeight['from'], band: string, units: UnitChoice): string {
  if (from === 'marked weight') return `${band}, from the marked weight. Weigh the bow at full draw.`;
  const inches = (si: number) => textQuantity(si, 'length', units);
  const { drawLength } = archer;
  if (drawLength === null) return 'Read on a scale; the archer\u2019s draw is not on record yet.';
  if (from === 'on the fingers') return 'Read on a scale at this draw.';
  if (from === 'read on the scale') return 'Off the force-draw readings, at this draw.';
  const { weightDraw, weightOnFingers } = setup.settings;
  if (weightOnFingers === null)
    return `${band}, drawn on from force-draw readings that end short of ${inches(drawLength)}: read on to it.`;
  return weightDraw === null
    ? `${band}: at which draw it was read is not on record. Read it again at ${inches(drawLength)}.`
    : `Read at ${inches(weightDraw)}; the draw is now ${inches(drawLength)}: read it again. Until then ${band}.`;
}
