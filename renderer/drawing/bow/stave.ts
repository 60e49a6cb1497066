import { inch } from '../../../core/units/exact.ts';
import type { BowKind } from '../../../core/model/bow.ts';
import type { DrawnBow } from './figures.ts';
import { between, flipped, type Place } from './points.ts';
import { finished, MIDDLE, type BowShape, type Part } from './shape.ts';

interface Stave {
  /** How round the arc is: 2 is a bow that bends alike all along, more keeps the middle straighter. */
  readonly power: number;
  /** Thickness from the middle to the tip [share of the half, inches]. */
  readonly depth: readonly Place[];
  /** How much the handle stands proud of the limbs' belly, and from where to where it fades [inches]. */
  readonly handle: number;
  readonly fade: readonly [full: number, none: number];
  /** How far the tip stands beyond the nock [inches]. */
  readonly beyond: number;
  /** From the top to the bottom of the wrapped grip [inches from the arrow]. */
  readonly wrap: readonly [number, number];
}

const longbow: Stave = {
  power: 2.05,
  depth: [
    [0, 1.18],
    [0.12, 1.12],
    [0.35, 0.96],
    [0.65, 0.78],
    [0.92, 0.56],
    [1, 0.5],
  ],
  handle: 0.1,
  fade: [2.2, 3.4],
  beyond: 0.7,
  wrap: [-0.2, -4.2],
};
const flatbow: Stave = {
  power: 2.2,
  depth: [
    [0, 0.9],
    [0.16, 0.66],
    [0.4, 0.58],
    [0.7, 0.5],
    [0.93, 0.46],
    [1, 0.44],
  ],
  handle: 1.05,
  fade: [2.5, 6],
  beyond: 0.6,
  wrap: [-0.25, -4.6],
};
const selfBow: Stave = {
  power: 2.1,
  depth: [
    [0, 1],
    [0.14, 0.86],
    [0.4, 0.74],
    [0.7, 0.6],
    [0.93, 0.5],
    [1, 0.46],
  ],
  handle: 0.45,
  fade: [2.3, 5.2],
  beyond: 0.55,
  wrap: [-0.2, -4.3],
};
const staves: Readonly<Partial<Record<BowKind, Stave>>> = { longbow, flatbow, 'self bow': selfBow };

/** Where the limbs' distance to the string is read on a bow without a riser: so far from its middle [m]. */
const STAVE_ROOT = 7 * inch;
/** A limb's reading moves the drawn limb at most so far: beyond it a slip of the pen is likelier than a bow [m]. */
const MOST_BENT = 1.2 * inch;
const STEPS = 120;

type Braced = Pick<DrawnBow, 'kind' | 'brace' | 'string'>;

/** The arc of the braced limbs without their handle, how proud the handle stands, and where the roots are: over the height from the middle. */
function arcOf({ kind, brace, string }: Braced) {
  const made = staves[kind] ?? selfBow;
  const half = string / 2;
  const fade: readonly Place[] = [
    [made.fade[0], 1],
    [made.fade[1], 0],
  ];
  const proud = (w: number) => made.handle * inch * between(fade, Math.abs(w + 0.75 * inch) / inch);
  const deepest = brace + proud(0);
  const arc = (w: number) => deepest * (1 - Math.abs(w / half) ** made.power);
  return { made, half, proud, arc, root: Math.min(STAVE_ROOT, 0.4 * half) };
}

/** How far from the string the limbs' roots stand when the arc is left as it is [m]. */
export function staveRoot(bow: Braced): number {
  const { arc, proud, root } = arcOf(bow);
  return arc(root) - proud(root);
}

/** A bow in one stave: a smooth arc from nock to nock, with a handle that stands more or less proud of it. */
export function stave(bow: DrawnBow): BowShape {
  const { made, half, proud, arc, root } = arcOf(bow);
  const natural = staveRoot(bow);
  const bends = { upper: limited(bow.upper - natural), lower: limited(bow.lower - natural) };
  /** A limb that is farther from the string or nearer than the arc says bulges so much there, and not at the handle or the tip. */
  const bent = (w: number): number => {
    const size = Math.abs(w);
    const share = size < root ? size / root : Math.max(0, 1 - (size - root) / (half - root));
    return (w > 0 ? bends.upper : bends.lower) * share * share * (3 - 2 * share);
  };
  const beyond = made.beyond * inch;
  const whole = half + beyond;
  const at = Array.from({ length: STEPS + 1 }, (_, i) => whole - (2 * whole * i) / STEPS);
  const inner = (w: number) => arc(w) + bent(w);
  const belly = at.map((w): Place => [inner(w) - proud(w), w + MIDDLE]);
  const back = at.map((w): Place => [inner(w) + between(made.depth, Math.abs(w) / half) * inch, w + MIDDLE]);
  const [wrapTop, wrapBottom] = [made.wrap[0] * inch, made.wrap[1] * inch];
  const wrapped = (line: readonly Place[]) => line.filter(([, v]) => v <= wrapTop && v >= wrapBottom);
  const tipPart = (up: 1 | -1): Part => {
    const inTip = (line: readonly Place[]) => line.filter(([, v]) => up * (v - MIDDLE) > half - 0.5 * inch);
    return {
      name: up === 1 ? 'upper tip' : 'lower tip',
      material: bow.kind === 'longbow' ? 'grip' : 'line',
      weight: 'inner',
      closed: true,
      line: [...inTip(belly), ...flipped(inTip(back))],
    };
  };
  const wood: Part = { name: 'stave', material: 'wood', weight: 'outline', closed: true, line: [...belly, ...flipped(back)] };
  const wrap: Part = {
    name: 'grip',
    material: 'grip',
    weight: 'inner',
    closed: true,
    line: [...wrapped(belly), ...flipped(wrapped(back))],
  };
  const middle = (inner(-MIDDLE) - proud(-MIDDLE) + inner(-MIDDLE) + between(made.depth, 0) * inch) / 2;
  return finished({
    parts: [wood, wrap, tipPart(1), tipPart(-1), ...passing(bow, belly, back)],
    string: [
      [0, half + MIDDLE],
      [0, -half + MIDDLE],
    ],
    serving: [2.6 * inch, -3 * inch],
    roots: {
      upper: [inner(root) - proud(root), root + MIDDLE],
      lower: [inner(-root) - proud(-root), -root + MIDDLE],
    },
    grip: [inner(0) - proud(0), MIDDLE],
    rest: [middle, 0],
  });
}

const limited = (bend: number): number => Math.min(MOST_BENT, Math.max(-MOST_BENT, bend));

/** Where the arrow passes: a shelf cut into the handle, or a plate let into it above the hand. */
function passing({ pass }: DrawnBow, belly: readonly Place[], back: readonly Place[]): Part[] {
  const [top, bottom] = pass === 'hand' ? [0.62 * inch, -0.1 * inch] : [2.4 * inch, -0.04 * inch];
  const inset = pass === 'hand' ? 0.42 : 0;
  const rows = belly.flatMap(([u, v], i): (readonly [Place, Place])[] => {
    const over = back[i];
    if (over === undefined || v > top || v < bottom) return [];
    return [
      [
        [u + inset * (over[0] - u), v],
        [over[0] - inset * (over[0] - u), v],
      ],
    ];
  });
  if (rows.length < 2) return [];
  const line = [...rows.map(([a]) => a), ...rows.map(([, b]) => b).toReversed()];
  return [{ name: pass === 'hand' ? 'arrow plate' : 'shelf', material: 'line', weight: 'inner', closed: true, line }];
}
