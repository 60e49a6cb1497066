import type { Bundle } from '../model/bundle.ts';
import type { UnitChoice } from '../model/preferences.ts';
import { suitability } from '../suitability/index.ts';
import { textQuantity } from '../units/index.ts';
import { fieldOf } from './fieldOf.ts';
import type { Finding } from './finding.ts';
import { goTo, rangeText, ruleOf, weightNames } from './parts.ts';
import { waitingFor } from './waiting.ts';

/**
 * Whether the shaft suits this bow at this draw, as one line in the column of checks.
 *
 * @equation measured deflection against what the column view (in words for people: the load on the shaft) needs; caution when stiff or weak, unknown when it cannot be told
 * @param bundle - the set-up with its records [record]
 * @param units - the person's choice of units [record]
 * @returns the finding; null for a compound, which has a finding of its own [record]
 * @validity as suitability of its room
 * @source from memory
 * @example suitabilityFinding(exampleBundle, defaultPreferences.units).title // "Spine 0.720 in, in range"
 */
export function suitabilityFinding(bundle: Bundle, units: UnitChoice): Finding | null {
  const { archer, bow, arrowSet, setup } = bundle;
  if (bow.bowKind === 'compound') return null;
  const answer = suitability({ archer, bow, arrowSet, settings: setup.settings });
  if (!answer.ok)
    return waitingFor(
      'suitability',
      'Whether the shaft suits: not known',
      answer.problem.sentence,
      'spine',
      ...fieldOf(answer.problem.field, ['arrow', 'arrowSet.deflection']),
    );
  const { verdict, why, margin, column, rule, weight, spine, viewsAgree } = answer.value;
  const text = (si: number) => textQuantity(si, 'deflection', units);
  const range = rangeText(margin.needed.low, margin.needed.high, 'deflection', units, false);
  const told = verdict !== 'cannot tell';
  return {
    id: 'suitability',
    level: verdict === 'in range' ? 'ok' : told ? 'caution' : 'unknown',
    title: `Spine ${spine.from === 'tube' ? 'about ' : ''}${text(margin.measured)}${told ? `, ${verdict}` : ': cannot tell'}`,
    detail:
      why ??
      `The load on the shaft wants ${range}; that band is not checked against a source.${viewsAgree === null ? '' : viewsAgree ? ' The rule of thumb agrees.' : ' The rule of thumb does not agree.'}`,
    rule: ruleOf(margin.measured, margin.needed.low, margin.needed.high, 'deflection', units, false),
    short: {
      figure: text(margin.measured),
      word: told && verdict !== 'in range' ? verdict : 'spine',
    },
    why: {
      title: 'Does this shaft suit?',
      text: `The draw force over the load at which the shaft would buckle. A shaft in range stands between ${column.band.low} and ${column.band.high} with this kind of rest; the band is not checked against a source and gives way to the archer\u2019s own groups. ${rule.applies ? `The rule of thumb says ${rule.verdict}.` : rule.why}`,
      equation: 'C = F L\u00b2 / (EI c(r))',
      symbols: [
        { symbol: 'C', name: 'load figure', value: column.figure.toFixed(2) },
        {
          symbol: 'F',
          name: weightNames[weight.from],
          value: textQuantity(weight.value, 'weight', units),
        },
        { symbol: 'L', name: 'nock throat to end of shaft', value: textQuantity(arrowSet.length ?? 0, 'length', units) },
        { symbol: 'r', name: 'front mass over shaft and front', value: column.frontShare.toFixed(2) },
        { symbol: '', name: 'deflection needed', value: range },
        {
          symbol: '',
          name:
            spine.from === 'tube' ? 'deflection reckoned from the tube, standard tester' : 'deflection measured, standard tester',
          value: spine.from === 'tube' ? rangeText(margin.low, margin.high, 'deflection', units, false) : text(margin.measured),
        },
      ],
      source: 'own derivation; band from memory',
    },
    action: verdict === 'in range' ? null : goTo('Arrow', 'arrow', 'arrowSet.deflection'),
  };
}
