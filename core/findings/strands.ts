import { LEAST_RESERVE, type StringFigures } from '../bow/index.ts';
import type { Bundle } from '../model/bundle.ts';
import type { UnitChoice } from '../model/preferences.ts';
import { textQuantity } from '../units/index.ts';
import { fieldOf } from './fieldOf.ts';
import type { Finding, FindingRule } from './finding.ts';
import { knownOf, type Known } from './known.ts';
import { goTo, ruleOf, standing, whyRule } from './parts.ts';
import { waitingFor } from './waiting.ts';

interface Range {
  readonly low: number | null;
  readonly high: number | null;
  readonly from: 'maker' | 'usual';
}

/**
 * The string's strands against what the bow's maker or common practice asks, and its strength against what a shot asks of it.
 *
 * @equation stop where the tension of a shot passes the breaking strength; caution below six times the draw weight, and outside the maker's range, else outside the usual count for fibre and weight
 * @param bundle - the set-up with its records [record]
 * @param units - the person's choice of units [record]
 * @param known - what several checks rest on [record]
 * @returns the finding; null for a compound, and for a fibre of which nothing is known without a maker's range [record]
 * @validity as stringFigures of the bow room: new strings, whole and well served
 * @source common practice
 * @example strandsFinding(exampleBundle, defaultPreferences.units).title // "String: fibre and strands not noted"
 */
export function strandsFinding(bundle: Bundle, units: UnitChoice, known: Known = knownOf(bundle, units)): Finding | null {
  const { bow, setup } = bundle;
  const { strands, stringMaterial: fibre } = setup.settings;
  if (bow.bowKind === 'compound') return null;
  if (strands === null || fibre === null)
    return waitingFor(
      'strands',
      `String: ${fibre !== null ? 'strands' : strands !== null ? 'fibre' : 'fibre and strands'} not noted`,
      'Its fibre and strands say what it holds, and whether the bow may carry it.',
      'string',
      'bow',
      fibre === null ? 'settings.stringMaterial' : 'settings.strands',
    );
  const string = known.string();
  const range = rangeOf(bundle, string.ok ? string.value : null);
  if (!string.ok && range === null)
    return string.problem.code === 'unknown fibre'
      ? null
      : waitingFor(
          'strands',
          'What the string holds: not known',
          string.problem.sentence,
          'string',
          ...fieldOf(string.problem.field, ['bow', 'settings.strands']),
        );
  const stands = range === null ? 'inside' : standing(strands, range.low, range.high, 0);
  const reserve = string.ok ? string.value.reserve : null;
  const holds = string.ok ? string.value.holds : 'within common practice';
  const weak = holds !== 'within common practice';
  const stop = holds === 'beyond its strength';
  const whole = String(Math.round(strands));
  const count = `${whole} strands of ${fibre === 'other' ? 'another fibre' : fibre}`;
  // Rounded down: what falls short of six must not read as six.
  const times = (Math.floor(10 * (reserve ?? 0)) / 10).toFixed(1);
  const force = (si: number) => textQuantity(si, 'weight', units, { digits: 0 });
  return {
    id: 'strands',
    level: stop ? 'stop' : weak || stands !== 'inside' ? 'caution' : 'ok',
    title: stop
      ? `${count}: a shot may break it`
      : weak
        ? `${count}: hold ${times} times the weight`
        : `${count}${stands === 'inside' ? '' : stands === 'low' ? ': few' : ': many'}`,
    detail:
      stop && string.ok
        ? `It breaks at about ${force(string.value.strength.value)}, and a shot pulls up to ${force(string.value.greatestTension.value)}. Shoot nothing with it: fit a stronger one.`
        : weak
          ? `Breaking at ${LEAST_RESERVE} times the draw weight is the least of common practice: more strands.`
          : rangeSentence(range),
    rule: weak ? ruleOf(reserve ?? 0, LEAST_RESERVE, null, 'ratio', units, false) : countRule(strands, range, units),
    short: weak ? { figure: `${times} \u00d7`, word: 'string' } : { figure: whole, word: 'strands' },
    why: whyRule(
      'What the string holds',
      'The strands together break at so many times the draw weight: six is the least of common practice, since the string stops the limbs when the arrow has gone. The bow maker\u2019s range of strands governs; without one the count that is usual for fibre and weight. Strengths of a strand are not checked against a source, and hold for a new string, whole and well served.',
      [
        ['', 'strands', whole],
        ['', 'fibre', fibre],
        ...(string.ok ? stringSymbols(string.value, force) : []),
        ...(range === null
          ? []
          : [['', range.from === 'maker' ? 'the maker\u2019s range' : 'usual', rangeWords(range)] as const]),
      ],
      weak ? 'common practice' : range?.from === 'maker' ? 'the bow maker\u2019s figures, as entered' : 'from memory',
    ),
    action: stop || weak || stands !== 'inside' ? goTo('Fix', 'bow', 'settings.strands') : null,
  };
}

function rangeOf({ bow }: Bundle, string: StringFigures | null): Range | null {
  const { strandsLow, strandsHigh } = bow;
  if (strandsLow !== null || strandsHigh !== null) {
    const swapped = strandsLow !== null && strandsHigh !== null && strandsLow > strandsHigh;
    return { low: swapped ? strandsHigh : strandsLow, high: swapped ? strandsLow : strandsHigh, from: 'maker' };
  }
  return string?.strandsUsual == null ? null : { ...string.strandsUsual, from: 'usual' };
}

const rangeWords = ({ low, high }: Range): string => {
  const [least, most] = [low, high].map((strands) => (strands === null ? '' : String(Math.round(strands))));
  return low === null ? `${most} at most` : high === null ? `${least} at least` : `${least} to ${most}`;
};

function rangeSentence(range: Range | null): string {
  if (range === null) return 'No count is usual for this fibre: the bow\u2019s or the string\u2019s maker says.';
  return range.from === 'maker'
    ? `The bow maker asks for ${rangeWords(range)}.`
    : `Usual for this fibre and weight: ${rangeWords(range)}, not checked against a source.`;
}

const countRule = (strands: number, range: Range | null, units: UnitChoice): FindingRule | null =>
  range === null ? null : ruleOf(strands, range.low, range.high, 'count', units, false);

const stringSymbols = (
  { strength, bracedTension, greatestTension, reserve }: StringFigures,
  force: (si: number) => string,
): (readonly [string, string, string])[] => [
  ['', 'breaks at about', force(strength.value)],
  ['', 'braced, about', force(bracedTension.value)],
  ['', 'while the arrow is on it, up to', force(greatestTension.value)],
  ['', 'strength over draw weight', (Math.floor(10 * reserve) / 10).toFixed(1)],
];
