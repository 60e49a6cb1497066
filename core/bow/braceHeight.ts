import type { Bow } from '../model/index.ts';
import { inch } from '../units/exact.ts';

/** Where a brace height may stand, where that is from and how sure it is. */
export interface BraceRange {
  readonly low: number;
  readonly high: number;
  readonly from: 'maker' | 'common practice' | 'from memory';
  readonly sureness: 'high' | 'medium' | 'low';
  /** The bows that the range speaks of, ready for a sentence. */
  readonly bows: string;
}

type Row = readonly [shortest: number, longest: number, low: number, high: number];

/** Recurves by AMO length, all in inches. Common practice. */
const recurveRowsIn: readonly Row[] = [
  [62, 64, 7.5, 8.5],
  [66, 68, 8, 9],
  [70, 72, 8.75, 9.5],
];

const common = (lowIn: number, highIn: number, sureness: BraceRange['sureness'], bows: string): BraceRange => ({
  low: lowIn * inch,
  high: highIn * inch,
  from: 'common practice',
  sureness,
  bows,
});

const allRecurves = common(8, 10, 'low', 'recurves of every length');

/** Half a millimetre of length decides nothing: it keeps 66 in and 1676 mm in the same row. */
const SAME_LENGTH = 0.0005;

const recurveRange = (length: number | null): BraceRange => {
  if (length === null || !Number.isFinite(length)) return allRecurves;
  for (const [index, [shortest, longest, low, high]] of recurveRowsIn.entries()) {
    if (length < shortest * inch - SAME_LENGTH) {
      const before = recurveRowsIn[index - 1];
      if (before === undefined) return allRecurves;
      // Between two rows: both are right for some makers, so the range holds them both and is less sure.
      return common(before[2], high, 'medium', `recurves between ${before[1]} and ${shortest} in (the rows on both sides)`);
    }
    if (length <= longest * inch + SAME_LENGTH) return common(low, high, 'high', `recurves of ${shortest} to ${longest} in`);
  }
  return allRecurves;
};

const makersRange = (low: number | null, high: number | null): BraceRange | null => {
  if (low === null || high === null || !(low > 0 && high > 0) || low === high) return null;
  // Ends typed in the wrong order still say what the maker means.
  return { low: Math.min(low, high), high: Math.max(low, high), from: 'maker', sureness: 'high', bows: 'this bow' };
};

/**
 * Range in which a bow's brace height belongs: the bow maker's own when both its ends are known, else common practice.
 *
 * @equation the maker's range; recurves by AMO length 62-64 in: 7.5-8.5 in, 66-68: 8-9, 70-72: 8.75-9.5, between two rows from the lower end of one to the upper end of the next, else 8-10; longbow 6-7; flatbow 6.5-7.5 (from memory); self bow 5.75-6.25
 * @param bow - bowKind, length [m], braceLow and braceHigh [m] [record]
 * @returns low and high [m], where they are from, how sure, and which bows are meant; null for a compound without its maker's range [record]
 * @validity one end of the maker's range alone, or two equal ends, are not a range; a recurve of unknown length counts among all recurves
 * @source common practice
 * @example braceHeightRange({ bowKind: 'longbow', length: null, braceLow: null, braceHigh: null }).low // 0.1524
 */
export function braceHeightRange(bow: Pick<Bow, 'bowKind' | 'length' | 'braceLow' | 'braceHigh'>): BraceRange | null {
  const own = makersRange(bow.braceLow, bow.braceHigh);
  if (own !== null) return own;
  switch (bow.bowKind) {
    case 'take-down recurve':
    case 'one-piece recurve':
      return recurveRange(bow.length);
    case 'longbow':
      return common(6, 7, 'medium', 'longbows');
    case 'flatbow':
      return { ...common(6.5, 7.5, 'medium', 'flatbows'), from: 'from memory' };
    case 'self bow':
      return common(5.75, 6.25, 'medium', 'self bows');
    case 'compound':
      return null;
  }
}

export interface BraceCheck {
  readonly verdict: 'low' | 'in range' | 'high';
  /** How far outside the range, 0 inside it [m]. */
  readonly distance: number;
}

/** A figure typed in another unit may miss the limit by a rounding error: a micrometre is inside. */
const ON_THE_LIMIT = 1e-6;

/**
 * Where a brace height stands against its range, and how far outside.
 *
 * @equation low below low − 1 µm, high above high + 1 µm, else in range
 * @param braceHeight - string to the pivot point of the grip [m]
 * @param range - low and high [m] [record]
 * @returns verdict, and the distance to the nearer end when outside [m] [record]
 * @validity RangeError for a brace height that is not a positive finite number or a range that is upside down
 * @source own derivation
 * @example braceHeightCheck(0.2, { low: 0.21, high: 0.23 }).verdict // "low"
 */
export function braceHeightCheck(braceHeight: number, range: Pick<BraceRange, 'low' | 'high'>): BraceCheck {
  if (!(braceHeight > 0 && Number.isFinite(braceHeight)))
    throw new RangeError(`braceHeight must be a positive finite number, not ${braceHeight}.`);
  if (!(range.low <= range.high)) throw new RangeError('A range needs its low end below its high end.');
  if (braceHeight < range.low - ON_THE_LIMIT) return { verdict: 'low', distance: range.low - braceHeight };
  if (braceHeight > range.high + ON_THE_LIMIT) return { verdict: 'high', distance: braceHeight - range.high };
  return { verdict: 'in range', distance: 0 };
}
