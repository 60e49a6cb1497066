import { chiSquareQuantile, tQuantile } from '../group/index.ts';
import type { Band } from '../model/band.ts';
import { given } from '../model/given.ts';
import { ok, refuse, type Result } from '../model/problem.ts';
import type { FlightSpeed } from '../model/readings.ts';

/** One reading against the line through the others. */
export interface JudgedSpeed extends FlightSpeed {
  /** What the others let expect there; null where they tell nothing [m/s]. */
  readonly expected: number | null;
  readonly verdict: 'agrees' | 'does not fit' | 'cannot tell';
}

/** Drag and launch speed out of speeds along the flight. */
export interface DragAlong {
  /** [1/m] */
  readonly k: Band;
  /** Where the arrow left: carried back to no distance [m/s]. */
  readonly launch: Band;
  /** In the order in which they were given. */
  readonly readings: readonly JudgedSpeed[];
  /** The one that the others say is wrong; null when there is none, or when it cannot be told which. */
  readonly inconsistent: number | null;
  /** Whether the readings are of one curve, so that k may be used. */
  readonly holds: boolean;
  /** Why not: one does not fit, one of three does not, or all of them scatter too much. */
  readonly doubt: 'one' | 'one of three' | 'scatter' | null;
  /** About the line, as a share; null with two readings [-]. */
  readonly scatter: number | null;
  /** The greatest drag between two neighbours over the least; null with two readings, and where an arrow would have gained speed on the way [-]. */
  readonly stretches: number | null;
}

/** How well one shot's speed repeats the next one's, archer and chronograph together, one standard deviation as a share: from memory. */
const REPEATS = 0.003;
/** What a speed is taken to be out by until enough readings say otherwise, with 95 % confidence, and the least that is ever claimed: from memory. */
const [DOUBT, FINEST] = [0.01, 0.004];
/** Readings that scatter by more than this share are of no one arrow. */
const MOST_SCATTER = 0.02;
/** Fewer readings than this beyond the line's own two cannot show that a chronograph is better than it is held to be. */
const ENOUGH = 4;
/** As for sight marks: odds at which one explanation is believed before another. */
const ODDS = 20;
/** No arrow loses less of its speed in a metre, and none more: from 3 mm and 30 g to 9.3 mm with great feathers and 12 g. From memory [1/m]. */
const believable = { least: 1.5e-4, most: 1.5e-2 } as const;

/**
 * Drag and launch speed of an arrow out of its speed at several places of its flight.
 *
 * @equation ln v = ln v₀ − k s by least squares; each reading against the others, z² = e²/(σ²(1 − h)), σ = 0.3 %; half widths from 1 % (95 %), or from the scatter where it contradicts that, or betters it with six readings and more, down to 0.4 %; v₀ has the chronograph's own 1 % besides
 * @param readings - distances [m] and speeds [m/s] of one arrow [list]
 * @returns k [1/m] and v₀ [m/s] with their bands, each reading judged by the others, and whether they are of one curve [record]
 * @validity flat flight in still air, the chronograph about as high as the loose: 1 m higher takes 0.3 % of 57 m/s; refused for fewer than two places, speeds that rise, and a drag that no arrow has
 * @source own derivation
 * @example dragAlong([{ distance: 0, speed: 60 }, { distance: 50, speed: 60 * Math.exp(-0.1) }]).value.k.value.toFixed(6) // "0.002000"
 */
export function dragAlong(readings: readonly FlightSpeed[]): Result<DragAlong> {
  for (const { distance, speed } of readings) {
    const one = given('the drag', { speedDistance: distance, arrowSpeed: speed });
    if (!one.ok) return one;
  }
  const line = fitted(readings);
  if (line === null)
    return refuse(
      'one place',
      'Speeds at two distances were expected: one at the bow and one farther down the range.',
      'flightSpeeds',
    );
  const { k, chi } = line;
  const df = readings.length - 2;
  const judged = judge(readings, line);
  if (!(k > 0))
    return refuse(
      'speed-gained',
      'These speeds do not fall along the flight, and an arrow only slows down. Read them again, one arrow in still air.',
      'flightSpeeds',
    );
  if (!(k >= believable.least && k <= believable.most))
    return refuse(
      'no arrow',
      k < believable.least
        ? 'These speeds fall by less than any arrow’s do. Read them again, farther apart.'
        : 'These speeds fall by more than any arrow’s do. Read them again, and check that all are of one arrow.',
      'flightSpeeds',
    );
  const scatter = df > 0 ? REPEATS * Math.sqrt(chi / df) : null;
  const half = halfWidth(scatter, df);
  const share = half / Math.sqrt(line.spread);
  const left = Math.exp(line.height + k * line.middle);
  const leaving = Math.hypot(half * Math.sqrt(1 / readings.length + line.middle ** 2 / line.spread), DOUBT);
  return ok({
    k: { value: k, low: Math.max(believable.least, k - share), high: k + share },
    launch: { value: left, low: left * Math.exp(-leaving), high: left * Math.exp(leaving) },
    ...judged,
    holds: judged.doubt === null,
    scatter,
    stretches: stretchesOf(readings),
  });
}

interface Line {
  readonly k: number;
  readonly middle: number;
  readonly height: number;
  readonly spread: number;
  /** Residuals of ln v, with the leverage of each. */
  readonly off: readonly { readonly error: number; readonly leverage: number }[];
  /** In squares of `REPEATS`. */
  readonly chi: number;
}

function fitted(readings: readonly FlightSpeed[]): Line | null {
  const count = readings.length;
  const rows = readings.map(({ distance, speed }) => ({ x: distance, y: Math.log(speed) }));
  const middle = rows.reduce((sum, { x }) => sum + x, 0) / count;
  const height = rows.reduce((sum, { y }) => sum + y, 0) / count;
  const spread = rows.reduce((sum, { x }) => sum + (x - middle) ** 2, 0);
  // Places nearer to each other than a stride are one place.
  if (!(spread > 0.5)) return null;
  const k = -rows.reduce((sum, { x, y }) => sum + (x - middle) * (y - height), 0) / spread;
  const off = rows.map(({ x, y }) => ({
    error: y - height + k * (x - middle),
    leverage: 1 / count + (x - middle) ** 2 / spread,
  }));
  return { k, middle, height, spread, off, chi: off.reduce((sum, { error }) => sum + (error / REPEATS) ** 2, 0) };
}

/** Each reading by the others; one is accused only where the others agree without it and no other one explains the rest nearly as well. */
function judge(readings: readonly FlightSpeed[], line: Line): Pick<DragAlong, 'readings' | 'inconsistent' | 'doubt'> {
  const count = readings.length;
  const told = line.off.map(({ error, leverage }) => {
    const free = 1 - leverage;
    return count > 2 && free > 1e-9 ? { beyond: error / free, square: (error / REPEATS) ** 2 / free } : null;
  });
  const refuted = count > 2 && line.chi > chiSquareQuantile(0.95, count - 2);
  const order = told.map((one, index) => ({ index, square: one?.square ?? 0 })).sort((a, b) => b.square - a.square);
  const [first, second] = order;
  const accused =
    refuted &&
    count > 3 &&
    first !== undefined &&
    first.square > chiSquareQuantile(1 - 0.05 / count, 1) &&
    line.chi - first.square <= chiSquareQuantile(0.95, count - 3) &&
    first.square - (second?.square ?? 0) >= 2 * Math.log(ODDS)
      ? first.index
      : null;
  const scatter = count > 2 ? REPEATS * Math.sqrt(line.chi / (count - 2)) : 0;
  const doubt = accused !== null ? 'one' : refuted && count === 3 ? 'one of three' : scatter > MOST_SCATTER ? 'scatter' : null;
  const expected = told.map((one, index) => (one === null ? null : (readings[index]?.speed ?? 0) * Math.exp(-one.beyond)));
  // The others of one that does not fit are told by each other alone.
  const rest = accused === null ? null : fitted(readings.filter((_, index) => index !== accused));
  return {
    inconsistent: accused,
    doubt,
    readings: readings.map(({ distance, speed }, index) => ({
      distance,
      speed,
      expected:
        rest === null || index === accused
          ? (expected[index] ?? null)
          : Math.exp(rest.height - rest.k * (distance - rest.middle)),
      verdict: index === accused ? 'does not fit' : told[index] === null || doubt === 'one of three' ? 'cannot tell' : 'agrees',
    })),
  };
}

/** The 1 % holds unless the scatter says that it is more, or enough readings that it is less. */
function halfWidth(scatter: number | null, df: number): number {
  if (scatter === null) return DOUBT;
  const usual = DOUBT / 1.96;
  const worse = scatter > usual * Math.sqrt(chiSquareQuantile(0.95, df) / df);
  if (!worse && df < ENOUGH) return DOUBT;
  const own = tQuantile(0.975, df) * scatter;
  return worse ? own : Math.max(FINEST, Math.min(own, DOUBT));
}

/** How unlike the drag is from stretch to stretch: what makes an inconsistent reading plain to see. */
function stretchesOf(readings: readonly FlightSpeed[]): number | null {
  const rows = [...readings].sort((a, b) => a.distance - b.distance);
  const drags = rows.slice(1).flatMap((row, index) => {
    const before = rows[index] as FlightSpeed;
    const path = row.distance - before.distance;
    return path > 0.5 ? [Math.log(before.speed / row.speed) / path] : [];
  });
  return drags.length > 1 && drags.every((drag) => drag > 0) ? Math.max(...drags) / Math.min(...drags) : null;
}
