import type { Bow } from '../model/index.ts';
import type { UnitChoice } from '../model/preferences.ts';
import { textQuantity } from '../units/index.ts';
import type { Braces, OfReadings } from './curve/ofReadings.ts';

/**
 * What a force-draw curve rests on beyond its readings, in sentences.
 *
 * @equation a brace height that nobody measured or that has moved; readings that were not used or end short of full draw; a single reading; letting down that takes nothing
 * @param bow - the readings [record]
 * @param braces - the brace height now and then [m] [record]
 * @param read - what the readings gave, or null [record]
 * @param full - AMO draw of the archer [m]
 * @param units - the person's choice of units [record]
 * @returns the sentences, most telling first [list]
 * @validity any texts
 * @source own derivation
 * @example forceNotes(exampleBundle.bow, { now: 0.2, read: 0.2, from: 'measured' }, null, 0.7, defaultPreferences.units) // []
 */
export function forceNotes(
  bow: Pick<Bow, 'forceDraw'>,
  braces: Braces,
  read: OfReadings | null,
  full: number,
  units: UnitChoice,
): readonly string[] {
  const length = (si: number) => textQuantity(si, 'length', units);
  const notes: string[] = [];
  const moved = braces.read !== braces.now;
  if (read === null && bow.forceDraw.some(({ way }) => way === 'draw'))
    notes.push(
      moved
        ? `The readings were taken at a brace height of ${length(braces.read)}, too far from the ${length(braces.now)} of now to be used, or there are too few of them. Read the bow again.`
        : 'There are too few readings to draw a curve through, or they end too far short of full draw. Read the bow again, up to full draw.',
    );
  if (read !== null && moved)
    notes.push(
      `The readings were taken at a brace height of ${length(braces.read)} and it is ${length(braces.now)} now. The curve is shifted, least at full draw, and its band holds the doubt: read it again to settle it.`,
    );
  if (read !== null && !read.reaches)
    notes.push(
      `The readings end at ${length(read.last)}, ${length(full - read.last)} short of full draw: the rest is drawn on with a band.`,
    );
  if (read?.endsOnFingers === true)
    notes.push(`Past the last reading the curve ends on the weight that was read on the fingers at ${length(read.last)}.`);
  if (read !== null && read.asRead === null)
    notes.push('One reading gives the height of the curve and the kind of bow its shape. Read it every inch or two.');
  if (braces.from === 'middle of its range')
    notes.push(`The brace height was not measured: the curve begins at ${length(braces.now)}, the middle of its range.`);
  return notes;
}
