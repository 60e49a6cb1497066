import type { Finding } from './finding.ts';
import { whyRule } from './parts.ts';

/**
 * The caution before any bare shaft is shot.
 *
 * @equation always a caution where groups are shot
 * @returns the finding [record]
 * @validity every bow
 * @source common practice
 * @example rangeCautionFinding().level // "caution"
 */
export function rangeCautionFinding(): Finding {
  return {
    id: 'range',
    level: 'caution',
    title: 'Bare shafts fly wide: start at 10 m or nearer',
    detail: 'Full butt and backstop, nobody ahead of the line. Your range\u2019s rules govern.',
    rule: null,
    short: { figure: '10 m', word: 'start' },
    why: whyRule(
      'Before shooting bare shafts',
      'A shaft without fletching does not straighten its flight and may strike far from where it was aimed. Arm guard and tab or glove on; one line, one signal to shoot, one to collect; all forward together; stop at once on the stop signal. Never draw above the target.',
      [],
      'common practice',
    ),
    action: null,
  };
}
