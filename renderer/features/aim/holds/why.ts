import type { HoldRow } from '../../../../core/aim/index.ts';
import type { Why } from '../../../../core/findings/finding.ts';
import type { UnitChoice } from '../../../../core/model/preferences.ts';
import { textQuantity } from '../../../../core/units/index.ts';
import type { Aimed } from './derive.ts';

/** What opens behind *Why*: how a point of aim follows from the flight and from the triangle of eye, nock and tip. */
export function holdWhy({ launches, tipForward, eyeUp }: Aimed, { distance, hold }: HoldRow, units: UnitChoice): Why {
  const { speed, eyeHeight, targetDrop = 0 } = launches.value;
  const text = (si: number, use: Parameters<typeof textQuantity>[1]) => textQuantity(si, use, units);
  return {
    title: 'Where the tip is held',
    text:
      'Eye, nock and tip of the arrow are one triangle, which the archer tilts as a whole. The flight asks for one launch angle; the triangle then says where the tip is seen against the target.\n' +
      'The tip is the middle of the point as the eye sees it. Whoever sights over its upper edge measures the eye from the top of the shaft.\n' +
      'The band is that of speed and drag. An eye height that is measured a little wrong is not in it.',
    equation: 'h = R tan(θ − arctan(e / L)) + d',
    symbols: [
      { symbol: 'R', name: 'to the target', value: text(distance, 'distance') },
      {
        symbol: 'θ',
        name: `launch angle that strikes the centre, at ${text(speed, 'speed')}`,
        value: text(angleOf(launches.value, tipForward, distance, hold.value), 'angle'),
      },
      { symbol: 'e', name: 'from the arrow’s axis up to the eye', value: text(eyeHeight, 'setting') },
      { symbol: 'L', name: 'from the nock to the tip', value: text(tipForward, 'length') },
      {
        symbol: 'd',
        name: `the centre under the eye, which stands ${text(eyeUp, 'length')} up`,
        value: text(targetDrop, 'drop'),
      },
      { symbol: 'h', name: 'the tip over the centre, in the plane of the target', value: text(hold.value, 'drop') },
    ],
    source: 'own derivation',
  };
}

/** The launch angle back from the hold. */
const angleOf = (
  { eyeHeight, targetDrop = 0 }: Aimed['launches']['value'],
  tipForward: number,
  distance: number,
  hold: number,
): number => Math.atan((hold - targetDrop) / distance) + Math.atan(eyeHeight / tipForward);
