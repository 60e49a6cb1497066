import type { ForceReading } from '../../model/index.ts';
import type { UnitChoice } from '../../model/preferences.ts';
import { countWord } from '../../model/sentence.ts';
import { inch } from '../../units/exact.ts';
import { textQuantity } from '../../units/index.ts';
import { AMO_ADDS } from '../stroke.ts';
import type { ReadPoint } from './rows.ts';

/** What is odd about one reading, and a sentence for its row. */
export interface ReadingFlag {
  /** Which of the bow's readings. */
  readonly index: number;
  readonly code: 'not rising' | 'below brace' | 'same draw' | 'let-down above draw' | 'beyond full draw';
  readonly sentence: string;
}

/** As near to full draw as a careful reading comes [m]. */
const AT_FULL = 0.25 * inch;

/**
 * What is odd about readings by themselves: at or below the brace height, beyond full draw, or not alike at one draw.
 *
 * @equation left out; drawn farther than full draw and 1/4 in; least and most of one draw apart
 * @param readings - the bow's readings [list]
 * @param read - the points of one way and the rows that are left out [record]
 * @param brace - the AMO draw at the brace height [m]
 * @param full - AMO draw of the archer [m]
 * @param units - the person's choice of units, for the sentences [record]
 * @returns one flag for each such reading [list]
 * @validity as pointsRead
 * @source own derivation
 * @example rowFlags([{ draw: 0.2, force: 9, way: 'draw' }], { points: [], leftOut: [0] }, 0.26, 0.7, defaultPreferences.units)[0].code // "below brace"
 */
export function rowFlags(
  readings: readonly ForceReading[],
  read: { readonly points: readonly ReadPoint[]; readonly leftOut: readonly number[] },
  brace: number,
  full: number,
  units: UnitChoice,
): readonly ReadingFlag[] {
  const length = (si: number) => textQuantity(si, 'length', units);
  const weight = (si: number) => textQuantity(si, 'weight', units);
  const low = read.leftOut.map((index): ReadingFlag => {
    const sentence = `Not used: ${length(readings[index]?.draw ?? 0)} is not beyond the brace height, which is ${length(brace)} as a draw (brace height and ${length(AMO_ADDS)}).`;
    return { index, code: 'below brace', sentence };
  });
  const others = read.points.flatMap(({ draw, least, most, rows }) => {
    const flags: Omit<ReadingFlag, 'index'>[] = [];
    if (draw > full + AT_FULL)
      flags.push({
        code: 'beyond full draw',
        sentence: `Beyond this archer\u2019s ${length(full)}: it shapes the end of the curve, and no energy is counted there.`,
      });
    if (most - least > 1e-6 * most)
      flags.push({
        code: 'same draw',
        sentence: `Read ${countWord(rows.length)} times at ${length(draw)}, ${weight(least)} to ${weight(most)}: the mean counts.`,
      });
    return flags.flatMap((flag) => rows.map((index): ReadingFlag => ({ index, ...flag })));
  });
  return [...low, ...others];
}
