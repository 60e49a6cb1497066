import type { CosineGap } from '../../../../core/aim/index.ts';
import type { Why } from '../../../../core/findings/finding.ts';
import type { UnitChoice } from '../../../../core/model/preferences.ts';
import { together } from '../../../../core/model/sentence.ts';
import { textQuantity } from '../../../../core/units/index.ts';
import type { Given } from './given.ts';
import type { Hill } from './lands.ts';
import { far, settingText } from './words.ts';

/** Why the cosine rule is not the whole of it, each reason with what it adds to the setting. */
export function gapText(slope: number, { gravity, drag, eye }: CosineGap, units: UnitChoice): string {
  const way = slope > 0 ? 'slows it on the way up' : 'hurries it on the way down';
  const reasons = [
    { part: gravity, says: `gravity along the path, which ${way}` },
    { part: drag, says: 'drag over the whole way' },
    { part: eye, says: 'the eye over the arrow' },
  ].map(({ part, says }) => ({ says, adds: textQuantity(part, 'distance', units, { digits: 1, signed: true }) }));
  const told = reasons.filter(({ adds }) => !/^0\.0/.test(adds));
  if (told.length === 0) return 'Here the cosine rule is as good as the full solution.';
  return `The rule leaves out ${together(told.map(({ says, adds }) => `${says} (${adds})`))}.`;
}

export function hillWhy(given: Given, hill: Hill, units: UnitChoice): Why {
  const chosen = hill.sides[given.slope < 0 ? 1 : 0];
  return {
    title: 'A shot up or down a slope',
    text:
      'Both ways gravity pulls the arrow off its line with its share square to the path alone, so the sight is set for less than the distance; that is the cosine rule. ' +
      'Its share along the path slows an arrow going up and hurries one going down, drag works on the whole length, and the eye stands over the arrow: the full solution has all three.',
    equation: 'the flight passes (S cos φ, S sin φ); δ = θ − φ; set for R with δ(R) = δ. Rule: S cos φ',
    symbols: [
      { symbol: 'S', name: 'distance along the slope', value: far(given.distance, units) },
      { symbol: 'φ', name: 'slope, up positive', value: textQuantity(given.slope, 'angle', units) },
      { symbol: 'v', name: 'speed of the arrow', value: textQuantity(given.launches.value.speed, 'speed', units) },
      { symbol: 'R', name: 'set for', value: chosen?.setFor == null ? 'none' : settingText(chosen.setFor, units) },
      { symbol: 'S cos φ', name: 'cosine rule', value: textQuantity(hill.cosineRule, 'distance', units, { digits: 1 }) },
    ],
    source: 'own derivation',
  };
}
