import { inch } from '../../../core/units/exact.ts';
import type { DrawnBow } from './figures.ts';
import { beside, flipped, inInches, smooth, type Place } from './points.ts';
import { finished, limbsOf, MIDDLE, type BowShape, type Part } from './shape.ts';

const WHEEL = 1.6 * inch;

const riserTable: readonly Place[] = [
  [0.1, 9],
  [0.9, 5],
  [1, 1],
  [0.2, -0.7],
  [0, -1.55],
  [-0.2, -3.5],
  [-0.5, -4.9],
  [0.2, -5.6],
  [0.1, -9],
  [0.1, -11.5],
  [1.1, -11.5],
  [1.5, -8],
  [2.1, -3],
  [2.2, 1],
  [1.8, 5],
  [1.1, 9],
];

/** A compound, in plain outline: recorded, with its brace height, and nothing of a finger's loose is said of it. */
export function compound(bow: DrawnBow): BowShape {
  const axle = bow.length / 2;
  const half = Math.min(11 * inch, 0.62 * axle);
  const scale = half / (11 * inch);
  const riserLine = inInches(riserTable).map(([u, v]): Place => [bow.brace + u, (v - MIDDLE) * scale + MIDDLE]);
  const round = (radius: number, up: 1 | -1): readonly Place[] =>
    Array.from({ length: 41 }, (_, i): Place => {
      const angle = (i * Math.PI) / 20;
      return [WHEEL + radius * Math.cos(angle), up * axle + MIDDLE + radius * Math.sin(angle)];
    });
  const parts = limbsOf.flatMap(({ name, up }): Part[] => {
    const belly = smooth(
      [
        [bow.brace + 0.3 * inch, up * (half - 2 * inch) + MIDDLE],
        [bow.brace * 0.72 + WHEEL * 0.3, up * (half + (axle - half) * 0.4) + MIDDLE],
        [WHEEL, up * axle + MIDDLE],
      ],
      10,
    );
    const back = beside(belly, () => up * 0.5 * inch);
    return [
      { name: `${name} limb`, material: 'limb', weight: 'outline', closed: true, line: [...belly, ...flipped(back)] },
      { name: `${name} wheel`, material: 'metal', weight: 'outline', closed: true, line: round(WHEEL, up) },
      { name: `${name} axle`, material: 'hole', weight: 'inner', closed: true, line: round(0.3 * inch, up) },
    ];
  });
  const riser: Part = {
    name: 'riser',
    material: 'metal',
    weight: 'outline',
    closed: true,
    line: smooth([...riserLine, riserLine[0] as Place], 6),
  };
  const cable: Part = {
    name: 'cable',
    material: 'line',
    weight: 'inner',
    closed: false,
    line: limbsOf.map(({ up }): Place => [WHEEL * 1.8, up * axle + MIDDLE]),
  };
  const root = half - 2 * inch;
  return finished({
    parts: [cable, ...parts, riser],
    string: [
      [0, axle + MIDDLE],
      [0, -axle + MIDDLE],
    ],
    serving: [2.6 * inch, -3 * inch],
    roots: { upper: [bow.brace, root + MIDDLE], lower: [bow.brace, -root + MIDDLE] },
    grip: [bow.brace, -1.55 * inch],
    rest: [bow.brace + 1.35 * inch, 0],
  });
}
