import { inch } from '../../../core/units/exact.ts';
import type { DrawnBow } from './figures.ts';
import { beside, between, flipped, inInches, smooth, type Place } from './points.ts';
import { finished, limbsOf, MIDDLE, type BowShape, type Part } from './shape.ts';

/** The recurved end stands so far out from the string at its tip, and lies on the string from so far below it [m]. */
const CURL = 0.95 * inch;
const LIES = 2.2 * inch;

/** How a braced limb comes in to the string, as a share of its root's distance, from the root to where it touches. */
const comesIn: readonly Place[] = [
  [0, 1],
  [0.12, 0.955],
  [0.25, 0.878],
  [0.4, 0.75],
  [0.55, 0.578],
  [0.7, 0.365],
  [0.82, 0.178],
  [0.92, 0.052],
  [1, 0.008],
];

/** From where it touches to the tip: [inches up, inches out]. */
const curls: readonly Place[] = [
  [0.9, 0.09],
  [1.6, 0.36],
  [2.2, CURL / inch],
];

/** Thickness from root to tip [share, inches]: thinnest where it works most, stiff again at the tip. */
const thick: readonly Place[] = [
  [0, 0.46],
  [0.25, 0.34],
  [0.55, 0.26],
  [0.8, 0.24],
  [0.93, 0.34],
  [1, 0.3],
];

/** A riser's half length by the bow's length: three are in use for take-downs; a one-piece bow's grows with it. */
export function riserHalf({ kind, length }: Pick<DrawnBow, 'kind' | 'length'>): number {
  if (kind === 'one-piece recurve') return Math.min(0.165 * length, 10.6 * inch);
  return (length < 65 * inch ? 11.1 : length < 71 * inch ? 12.1 : 13.1) * inch;
}

/** The tables are of a riser this long either way; the window and what lies under the grip reach farther on a longer one [m]. */
const TABLE_HALF = 12.1 * inch;
const WINDOW_FROM = 0.8 * inch;
const GRIP_TO = -5.6 * inch;

export function reaching(half: number): (v: number) => number {
  const over = half - TABLE_HALF;
  const most = TABLE_HALF - 3.4 * inch;
  return (v) =>
    v > WINDOW_FROM
      ? v + (over * (v - WINDOW_FROM)) / (most - WINDOW_FROM)
      : v < GRIP_TO
        ? v - (over * (GRIP_TO - v)) / (most + GRIP_TO)
        : v;
}

interface Limb {
  readonly belly: readonly Place[];
  readonly back: readonly Place[];
  readonly root: Place;
  readonly touch: Place;
  readonly nock: Place;
}

/** One limb, root to tip, drawn as if it were the upper one. The string's half length decides where the tip stands. */
function limb(root: number, half: number, halfString: number, butt: number): Limb {
  // The string runs straight to where the limb touches it and on along the curl: a little longer than the straight way to the nock.
  const tip = halfString + 0.2 * inch;
  const touch = tip - LIES;
  const line: Place[] = comesIn.map(([share, distance]) => [root * distance, half + share * (touch - half)]);
  line.push(...curls.map(([up, out]): Place => [out * inch, touch + up * inch]));
  const curve = smooth(line, 6);
  const [a, b] = [curve[0] as Place, curve[2] as Place];
  const slope = (b[0] - a[0]) / (b[1] - a[1]);
  const whole: readonly Place[] = [[root - slope * butt, half - butt], ...curve];
  const back = beside(whole, (_, [, v]) => between(thick, (v - half) / (tip - half)) * inch);
  return { belly: whole, back, root: [root, half], touch: [0, touch], nock: [0.6 * inch, tip - 0.4 * inch] };
}

const mirrored = (line: readonly Place[]): readonly Place[] => line.map(([u, v]) => [u, -v]);
/** Limbs are made about the bow's middle and stand about the arrow. */
const placed = (line: readonly Place[], up: 1 | -1): readonly Place[] =>
  (up === 1 ? line : mirrored(line)).map(([u, v]) => [u, v + MIDDLE]);

/** The riser's edges in inches: [how far from the grip's throat, how high]; its ends follow the limbs. */
const bellyMiddle: readonly Place[] = [
  [0.02, 6.6],
  [0.62, 4.7],
  [0.98, 2.7],
  [1, 1],
  [0.72, 0.1],
  [0.24, -0.7],
  [0, -1.55],
  [0.05, -2.4],
  [-0.2, -3.5],
  [-0.58, -4.55],
  [-0.5, -5.05],
  [0.02, -5.5],
  [0.2, -6.8],
];
const backMiddle: readonly Place[] = [
  [0.5, -9.7],
  [1.22, -8.5],
  [1.74, -6.4],
  [2.06, -3.6],
  [2.22, -1.4],
  [2.26, 0.8],
  [2.12, 3],
  [1.8, 5],
  [1.24, 6.5],
  [0.5, 7.5],
];
const grip: readonly Place[] = [
  [0.62, -0.2],
  [0.24, -0.75],
  [0, -1.55],
  [0.05, -2.4],
  [-0.2, -3.5],
  [-0.58, -4.55],
  [-0.5, -5.05],
  [0.04, -5.45],
  [0.85, -5.05],
  [1.2, -3.7],
  [1.24, -2.2],
  [1.06, -0.9],
];
const sightWindow: readonly Place[] = [
  [0.66, 5.8],
  [1.2, 4.2],
  [1.42, 2.4],
  [1.4, 0.9],
  [1.2, 0.02],
  [0.74, 0.04],
];

const fromThroat = (rows: readonly Place[], brace: number): Place[] => inInches(rows).map(([u, v]): Place => [brace + u, v]);

/** A recurve, its riser bolted to the limbs or glued into them. */
export function recurve(bow: DrawnBow): BowShape {
  const takeDown = bow.kind === 'take-down recurve';
  const half = riserHalf(bow);
  const roots = { upper: bow.upper, lower: bow.lower };
  const butt = (takeDown ? 2.3 : 0.9) * inch;
  const made = limbsOf.map(({ name, up }) => ({ name, up, ...limb(roots[name], half, bow.string / 2, butt) }));
  const limbs: Part[] = made.map(({ name, up, belly, back }) => ({
    name: `${name} limb`,
    material: 'limb',
    weight: 'outline',
    closed: true,
    line: placed([...belly, ...flipped(back)], up),
  }));
  const nocks: Part[] = made.map(({ name, up, nock: [u, v] }) => ({
    name: `${name} nock`,
    material: 'line',
    weight: 'inner',
    closed: false,
    line: placed(
      [
        [u - 0.16 * inch, v + 0.2 * inch],
        [u + 0.36 * inch, v - 0.12 * inch],
      ],
      up,
    ),
  }));
  const [upper, lower] = made as [(typeof made)[number], (typeof made)[number]];
  const end = (which: typeof upper, rows: readonly Place[]): readonly Place[] =>
    placed(
      inInches(rows).map(([du, dv]): Place => [which.root[0] + du, half + dv]),
      which.up,
    );
  const ends = takeDown ? { belly: pocketBelly, back: pocketBack } : { belly: fadeBelly, back: fadeBack };
  const reach = reaching(half);
  const middle = (rows: readonly Place[]) => fromThroat(rows, bow.brace).map(([u, v]): Place => [u, reach(v)]);
  const belly = [...end(upper, ends.belly), ...middle(bellyMiddle), ...flipped(end(lower, ends.belly))];
  const back = [...flipped(end(lower, ends.back)), ...middle(backMiddle), ...end(upper, ends.back)];
  const riser: Part = {
    name: 'riser',
    material: takeDown ? 'metal' : 'wood',
    weight: 'outline',
    closed: true,
    line: [...smooth(belly, 5), ...smooth(back, 5)],
  };
  const inside: Part[] = [
    {
      name: 'sight window',
      material: 'line',
      weight: 'inner',
      closed: false,
      line: smooth(middle(sightWindow), 5),
    },
    {
      name: 'grip',
      material: 'grip',
      weight: 'inner',
      closed: true,
      line: smooth([...fromThroat(grip, bow.brace), ...fromThroat(grip.slice(0, 1), bow.brace)], 5),
    },
  ];
  const rigging = takeDown ? made.flatMap(({ name, up, root }) => bolt(name, up, root, half)) : [];
  return finished({
    parts: takeDown ? [...limbs, riser, ...inside, ...rigging, ...nocks] : [...limbs, riser, ...inside, ...nocks],
    string: [
      ...placed([upper.nock, ...flipped(lying(upper)), upper.touch], 1),
      ...placed([lower.touch, ...lying(lower), lower.nock], -1),
    ],
    serving: [4 * inch, -4.4 * inch],
    roots: { upper: placed([upper.root], 1)[0] as Place, lower: placed([lower.root], -1)[0] as Place },
    grip: [bow.brace, -1.55 * inch],
    rest: [bow.brace + 1.35 * inch, 0],
  });
}

/** The stretch of the belly that the string lies on. */
const lying = ({ belly, touch, nock }: Limb): readonly Place[] =>
  belly.filter(([, v]) => v > touch[1] && v < nock[1]).map(([u, v]) => [u - 0.03 * inch, v]);

// How the riser ends, in inches from the limb's root: in a pocket whose cheeks hold the limb, or fading into the limb.
const pocketBelly: readonly Place[] = [
  [0.06, 0.05],
  [-0.34, -0.25],
  [-0.46, -1],
  [-0.26, -2.4],
];
const pocketBack: readonly Place[] = [
  [0.62, -2.9],
  [0.34, -2.2],
  [0.2, -1.2],
];
const fadeBelly: readonly Place[] = [
  [-0.2, 1.2],
  [-0.14, 0.2],
  [-0.02, -1.1],
];
const fadeBack: readonly Place[] = [
  [0.86, -2],
  [0.52, -0.6],
  [0.17, 1.2],
];

/** The bolt that sets a limb's angle, its head toward the target. */
function bolt(name: string, up: 1 | -1, [u]: Place, half: number): Part[] {
  const box = (du: number, dv: number, width: number, height: number): readonly Place[] =>
    placed(
      [
        [u + du * inch, half + dv * inch],
        [u + (du + width) * inch, half + (dv + 0.04) * inch],
        [u + (du + width) * inch, half + (dv - height) * inch],
        [u + du * inch, half + (dv - height - 0.04) * inch],
      ],
      up,
    );
  return [{ name: `${name} bolt`, material: 'metal', weight: 'inner', closed: true, line: box(0.68, -1.45, 0.4, 0.62) }];
}
