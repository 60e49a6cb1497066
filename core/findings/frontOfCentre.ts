import type { ArrowSet } from '../model/arrowSet.ts';
import type { Bundle } from '../model/bundle.ts';
import type { UnitChoice } from '../model/preferences.ts';
import type { Finding } from './finding.ts';
import { knownOf, type Known } from './known.ts';
import { goTo, standing } from './parts.ts';

/** Usual front-of-centre in percent, where anything is usual. Carbon spans carbon-aluminium (9 to 11) and light barrelled shafts (11 to 16). */
const usual: Readonly<
  Record<
    ArrowSet['material'],
    { readonly low: number; readonly high: number; readonly from: 'common practice' | 'from memory' } | null
  >
> = {
  aluminium: { low: 7, high: 9, from: 'common practice' },
  carbon: { low: 9, high: 16, from: 'common practice' },
  wood: { low: 7, high: 12, from: 'from memory' },
  other: null,
};

/** As finely as the figure is shown, in percent. */
const SHOWN = 0.05;

/** Farther outside than this it is worth a look [% of the length]: from memory. */
const HABIT = 4;

/**
 * The front-of-centre against what is usual for the material.
 *
 * @equation aluminium 7 to 9 %, carbon 9 to 16 %, wood 7 to 12 % (from memory); more than 4 % outside is a caution
 * @param bundle - the set-up with its records [record]
 * @param units - the person's choice of units [record]
 * @param known - what several checks rest on [record]
 * @returns the finding; null while it cannot be reckoned, and for other materials [record]
 * @validity the measured balance point governs; a habit and no limit of safety
 * @source common practice
 * @example frontOfCentreFinding(exampleBundle, defaultPreferences.units).title // "Front of centre 14.8 %"
 */
export function frontOfCentreFinding(bundle: Bundle, units: UnitChoice, known: Known = knownOf(bundle, units)): Finding | null {
  const range = usual[bundle.arrowSet.material];
  const build = known.build();
  if (range === null || !build.ok) return null;
  const { measured, foc: reckoned } = build.value;
  const percent = 100 * (measured.foc ?? reckoned);
  const { low, high, from } = range;
  const stands = standing(percent, low, high, SHOWN);
  const text = `${percent.toFixed(1)} %`.replace('-', '\u2212');
  const where = measured.foc === null ? 'Reckoned from the parts' : 'From the measured balance point';
  const span = high - low;
  return {
    id: 'frontOfCentre',
    // A habit of the trade: a little outside it many shoot well.
    level: percent < low - HABIT || percent > high + HABIT ? 'caution' : 'ok',
    title: `Front of centre ${text}${stands === 'inside' ? '' : `, ${stands}`}`,
    detail: `${where}; ${low} to ${high} % is usual for ${bundle.arrowSet.material}${from === 'from memory' ? ', not checked against a source' : ''}. Indoors it matters little.`,
    rule: {
      value: percent,
      low,
      high,
      min: Math.min(percent, low) - 0.4 * span,
      max: Math.max(percent, high) + 0.4 * span,
      lowText: String(low),
      highText: `${high} %`,
    },
    short: { figure: text, word: 'front' },
    why: {
      title: 'Front of centre',
      text: 'How far ahead of the middle of the shaft the arrow balances, as a share of its length. More steadies it in wind and makes it drop sooner; less carries farther. What is usual goes by the material.',
      equation: 'FOC = (A \u2212 L/2) / L',
      symbols: [
        { symbol: 'FOC', name: measured.foc === null ? 'reckoned from the parts' : 'as balanced', value: text },
        { symbol: '', name: 'usual', value: `${low} to ${high} %` },
      ],
      source: from,
    },
    action: stands === 'inside' ? null : goTo('Arrow', 'arrow', 'arrowSet.pointMass'),
  };
}
