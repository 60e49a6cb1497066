import type { DrawWeight } from '../bow/index.ts';
import type { UnitChoice } from '../model/preferences.ts';
import { factorOf, showQuantity, textQuantity, unitOf, type Use } from '../units/index.ts';
import type { FindingAction, FindingRule, Screen, Why } from './finding.ts';

/**
 * Where a figure is from, as people read it: the marks are for those who check the code.
 *
 * @equation "from memory" reads "not checked against a source"; everything else stays
 * @param source - citation or mark [text]
 * @returns the same in plain words [text]
 * @validity any text
 * @source own derivation
 * @example sourceWords('own derivation; band from memory') // "own derivation; band not checked against a source"
 */
export function sourceWords(source: string): string {
  return source.replaceAll('from memory', 'not checked against a source');
}

/** What the draw weight is called where its symbol is told. */
export const weightNames: Readonly<Record<DrawWeight['from'], string>> = {
  'on the fingers': 'weight, on the fingers',
  'read on the scale': 'weight, off the force-draw readings',
  'at another draw': 'weight, read at another draw',
  'marked weight': 'weight, from the marked weight',
};

/** Below this a figure that was typed as the limit itself still counts as inside [m]: what is left of a conversion. */
export const HAIR = 1e-4;

/**
 * Where a value stands against its limits.
 *
 * @equation below when value < low − slack, above when value > high + slack, else inside; an absent limit never refuses
 * @param value - the value [SI]
 * @param low - least, or null [SI]
 * @param high - greatest, or null [SI]
 * @param slack - how far past a limit still counts as on it [SI]
 * @returns `low`, `high` or `inside` [choice]
 * @validity finite figures
 * @source own derivation
 * @example standing(0.006, 0.003, 0.01, 0) // "inside"
 */
export function standing(value: number, low: number | null, high: number | null, slack: number): 'low' | 'high' | 'inside' {
  if (low !== null && value < low - slack) return 'low';
  if (high !== null && value > high + slack) return 'high';
  return 'inside';
}

/**
 * The small rule under a finding, in the unit that its texts carry.
 *
 * @equation figures in the shown unit; the drawn stretch reaches four tenths of the range past whatever lies farthest out
 * @param value - the value [SI]
 * @param low - least, or null [SI]
 * @param high - greatest, or null [SI]
 * @param use - what the figure is used for [choice]
 * @param units - the person's choice of units [record]
 * @param signed - a plus before the greater limit, for figures that may lie on either side of nought [choice]
 * @returns the rule with its texts [record]
 * @validity finite figures; with one limit only its text says "least" or "most"
 * @source own derivation
 * @example ruleOf(0.206375, 0.20955, 0.23495, 'length', defaultPreferences.units, false).highText // "9.25 in"
 */
export function ruleOf(
  value: number,
  low: number | null,
  high: number | null,
  use: Use,
  units: UnitChoice,
  signed: boolean,
): FindingRule {
  const factor = factorOf(use, units);
  const known = [value, low, high].filter((figure) => figure !== null);
  const [least, most] = [Math.min(...known), Math.max(...known)];
  const range = low !== null && high !== null ? high - low : Math.abs(most - least) || Math.abs(most) || factor;
  const symbol = unitOf(use, units);
  const unit = symbol === '' ? '' : ` ${symbol}`;
  return {
    value: value / factor,
    low: low === null ? null : low / factor,
    high: high === null ? null : high / factor,
    min: (least - 0.4 * range) / factor,
    max: (most + 0.4 * range) / factor,
    lowText: low === null ? '' : plain(low, use, units, false) + (high === null ? `${unit} least` : ''),
    highText: high === null ? '' : `${plain(high, use, units, signed)}${unit}${low === null ? ' most' : ''}`,
  };
}

/** On a scale of inches a decimal reads better than an eighth. */
function plain(si: number, use: Use, units: UnitChoice, signed: boolean): string {
  if (unitOf(use, units) !== 'in' || use !== 'length') return showQuantity(si, use, units, { signed }).figure;
  return showQuantity(si, use, units, { digits: 2, signed }).figure.replace(/\.?0+$/, '');
}

/**
 * A range with its unit said once.
 *
 * @equation low, "to", high, unit
 * @param low - lower end [SI]
 * @param high - upper end [SI]
 * @param use - what the figures are used for [choice]
 * @param units - the person's choice of units [record]
 * @param signed - a plus before ends above nought [choice]
 * @returns for instance "0.636 to 0.783 in" [text]
 * @validity finite figures
 * @source own derivation
 * @example rangeText(0.003, 0.01, 'setting', defaultPreferences.units, false) // "3 to 10 mm"
 */
export function rangeText(low: number, high: number, use: Use, units: UnitChoice, signed: boolean): string {
  return `${showQuantity(low, use, units, { signed }).figure} to ${textQuantity(high, use, units, { signed })}`;
}

/**
 * What opens behind Why for a rule in words.
 *
 * @equation title, rule, symbols with today's values, source; no formula
 * @param title - what is asked [text]
 * @param text - the rule in words [text]
 * @param symbols - symbol, name and value with its unit, each [list]
 * @param source - citation or mark [text]
 * @returns the record that the screens open [record]
 * @validity any texts
 * @source own derivation
 * @example whyRule('Tiller', 'Top less bottom.', [['t', 'tiller', '+3 mm']], 'common practice').symbols[0].value // "+3 mm"
 */
export function whyRule(
  title: string,
  text: string,
  symbols: readonly (readonly [symbol: string, name: string, value: string])[],
  source: string,
): Why {
  return { title, text, equation: null, symbols: symbols.map(([symbol, name, value]) => ({ symbol, name, value })), source };
}

/**
 * The way from a finding to the field that mends it.
 *
 * @equation a label, a screen and a field as record.field
 * @param label - the word on the link [text]
 * @param screen - where the field stands [choice]
 * @param field - record.field [text]
 * @returns the action [record]
 * @validity any field id that a screen knows
 * @source own derivation
 * @example goTo('Measure', 'bow', 'settings.tiller').field // "settings.tiller"
 */
export function goTo(label: string, screen: Screen, field: string): FindingAction {
  return { kind: 'go', label, screen, field };
}

/**
 * A text that begins a sentence.
 *
 * @equation first letter in upper case
 * @param text - the text [text]
 * @returns the same with its first letter in upper case [text]
 * @validity any text
 * @source own derivation
 * @example capital('maker') // "Maker"
 */
export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
