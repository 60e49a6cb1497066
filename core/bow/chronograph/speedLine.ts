import { chiSquareQuantile, tQuantile } from '../../group/index.ts';
import type { Band } from '../../model/band.ts';

/** What a club's chronograph may be out by, with 95 % confidence, as a share of the speed: from memory. */
export const CHRONOGRAPH_DOUBT = 0.01;
/** No chronograph that shows whole feet per second repeats better than this, as a share of the speed. */
const FINEST = 0.004;
/** Standard deviations in a 95 % half width. */
const HALF_WIDTH = 1.96;

/** 1/v² against arrow mass: a straight line where the virtual mass is the same for every arrow. */
export interface SpeedLine {
  readonly count: number;
  /** K, where the line meets nothing on the far side; its ends are unbounded when the line might be level [kg]. */
  readonly virtualMass: Band;
  /** W, half of 1 over the slope; infinite on a level line [J]. */
  readonly returned: Band;
  /** Whether slope and place tell K and W at all. */
  readonly bounded: boolean;
  /** Scatter of the speeds about the line, as a share; null with two readings [-]. */
  readonly scatter: number | null;
  /** Speed of an arrow of any mass, in the units of the readings [m/s]. */
  readonly speed: (mass: number) => Band;
  /** How far K may differ at most over these masses from what the line takes it for, and whether it surely does [kg]; null where that cannot be told. */
  readonly bend: { readonly most: number; readonly sure: boolean } | null;
}

interface Reading {
  readonly mass: number;
  readonly speed: number;
}

/**
 * The straight line of 1/v² against arrow mass, which is Klopsteg's law with K and the returned energy as unknowns.
 *
 * @equation 1/v² = (m + K)/(2W) by least squares with weights v⁴ (equal doubt in percent); K by Fieller's interval, W by the slope's; half widths t s of the residual where it contradicts the chronograph's 1 %, or betters it with six readings and more, down to 0.4 %; else that 1 %
 * @param readings - masses [kg] and speeds [m/s], at least two masses apart [list]
 * @returns K [kg], W [J], the speed at any mass [m/s], and how far the line is from straight [record]
 * @validity errors of the readings independent of each other, equal in percent; a chronograph that is out by one factor moves W by twice that and K not at all, which the band of W holds
 * @source klopsteg-1943, fieller-1954
 * @example speedLine([{ mass: 0.02, speed: 60 }, { mass: 0.03, speed: 50 }]).returned.value // 40.90909090909091
 */
export function speedLine(readings: readonly Reading[]): SpeedLine {
  const line = fitted(readings);
  const { weight, spread, middle, height, slope, residual } = line;
  const df = readings.length - 2;
  const scatter = df > 0 ? Math.sqrt(residual / df) : null;
  const half = halfWidth(scatter, df);
  const z = height / slope;
  const a = slope * slope - (half * half) / spread;
  const inner = (height * slope) ** 2 - a * (height * height - (half * half) / weight);
  const root = Math.sqrt(Math.max(0, inner));
  const bounded = slope > 0 && a > 0;
  const tilt = half / Math.sqrt(spread);
  const returned = 0.5 / slope;
  const reach = (end: number) => Math.hypot(end - returned, 2 * CHRONOGRAPH_DOUBT * returned);
  return {
    count: readings.length,
    bounded,
    scatter,
    virtualMass: {
      value: z - middle,
      low: bounded ? (height * slope - root) / a - middle : -Infinity,
      high: bounded ? (height * slope + root) / a - middle : Infinity,
    },
    returned: {
      value: returned,
      low: bounded ? Math.max(0, returned - reach(0.5 / (slope + tilt))) : 0,
      high: bounded ? returned + reach(0.5 / (slope - tilt)) : Infinity,
    },
    speed: (mass) => {
      const y = height + slope * (mass - middle);
      const off = half * Math.sqrt(1 / weight + (mass - middle) ** 2 / spread);
      const value = 1 / Math.sqrt(y);
      const out = (end: number) => Math.hypot(end - value, CHRONOGRAPH_DOUBT * value);
      return {
        value,
        low: Math.max(0, value - out(1 / Math.sqrt(y + off))),
        high: value + out(1 / Math.sqrt(Math.max(y - off, y / 4))),
      };
    },
    bend: bendOf(readings, line),
  };
}

/** Below this a small scatter may be luck. */
const FEW = 4;

/** The chronograph's doubt holds unless the scatter says that it is more, or enough readings that it is less. */
function halfWidth(scatter: number | null, df: number): number {
  if (scatter === null) return CHRONOGRAPH_DOUBT;
  const usual = CHRONOGRAPH_DOUBT / HALF_WIDTH;
  const worse = scatter > usual * Math.sqrt(chiSquareQuantile(0.95, df) / df);
  if (!worse && df < FEW) return CHRONOGRAPH_DOUBT;
  const own = tQuantile(0.975, df) * scatter;
  return worse ? own : Math.max(FINEST, Math.min(own, CHRONOGRAPH_DOUBT));
}

interface Line {
  readonly weight: number;
  readonly spread: number;
  readonly middle: number;
  readonly height: number;
  readonly slope: number;
  readonly residual: number;
}

/** Weights v⁴/4 make the residual the square of the speeds' scatter as a share. */
function fitted(readings: readonly Reading[]): Line {
  const rows = readings.map(({ mass, speed }) => ({ mass, y: speed ** -2, w: speed ** 4 / 4 }));
  const sum = (of: (row: (typeof rows)[number]) => number) => rows.reduce((total, row) => total + of(row), 0);
  const weight = sum(({ w }) => w);
  const middle = sum(({ w, mass }) => w * mass) / weight;
  const height = sum(({ w, y }) => w * y) / weight;
  const spread = sum(({ w, mass }) => w * (mass - middle) ** 2);
  const slope = sum(({ w, mass, y }) => w * (mass - middle) * (y - height)) / spread;
  const residual = sum(({ w, mass, y }) => w * (y - height - slope * (mass - middle)) ** 2);
  return { weight, spread, middle, height, slope, residual };
}

/**
 * A third unknown, the square of the mass, made independent of the other two: how far the readings bend, told as K. Half a bend's
 * height over the masses is the most by which K differs from the line's.
 */
function bendOf(readings: readonly Reading[], line: Line): SpeedLine['bend'] {
  const masses = readings.map(({ mass }) => mass);
  const [least, most] = [Math.min(...masses), Math.max(...masses)];
  const distinct = new Set(masses.map((mass) => Math.round((20 * (mass - least)) / (most - least)))).size;
  if (readings.length < 4 || distinct < 3) return null;
  const { middle, height, slope, weight, spread } = line;
  const rows = readings.map(({ mass, speed }) => ({ x: mass - middle, y: speed ** -2, w: speed ** 4 / 4 }));
  const sum = (of: (row: (typeof rows)[number]) => number) => rows.reduce((total, row) => total + of(row), 0);
  const square = sum(({ w, x }) => w * x * x) / weight;
  const skew = sum(({ w, x }) => w * x * x * x) / spread;
  const bent = ({ x }: { readonly x: number }) => x * x - square - skew * x;
  const size = sum((row) => row.w * bent(row) ** 2);
  const curve = sum((row) => row.w * bent(row) * (row.y - height - slope * row.x)) / size;
  const residual = sum((row) => row.w * (row.y - height - slope * row.x - curve * bent(row)) ** 2);
  const df = readings.length - 3;
  const doubt = halfWidth(Math.sqrt(residual / df), df) / Math.sqrt(size);
  const asMass = (most - least) ** 2 / 4 / slope;
  return { most: (Math.abs(curve) + doubt) * asMass, sure: Math.abs(curve) > doubt };
}
