import { braceHeightCheck, braceHeightRange, type BraceRange } from '../../bow/index.ts';
import { rangeText } from '../../findings/parts.ts';
import type { Bundle } from '../../model/bundle.ts';
import { together } from '../../model/sentence.ts';
import type { UnitChoice } from '../../model/preferences.ts';
import { textQuantity } from '../../units/index.ts';

/** As a tape is read again [m]. */
const AS_READ = 0.001;
const ROUNDING = 1e-6;

/**
 * Whether a brace height may not be tried on a bow.
 *
 * @equation more than 1 mm below or above the maker's range, or where none is on record the common-practice range of that kind and length
 * @param step - brace height to try [m]
 * @param bow - bowKind, length [m], braceLow and braceHigh [m] [record]
 * @returns on which side it leaves the range; null inside it, or where there is no range [choice]
 * @validity positive heights; a tape is read again to 1 mm
 * @source common practice
 * @example braceOutside(0.127, exampleBundle.bow) // "low"
 */
export function braceOutside(step: number, bow: Parameters<typeof braceHeightRange>[0]): 'low' | 'high' | null {
  const range = braceHeightRange(bow);
  if (range === null) return null;
  // A step of a plan may be any figure that the records hold, nought included.
  if (!(step > 0)) return 'low';
  const { verdict, distance } = braceHeightCheck(step, range);
  return verdict === 'in range' || distance <= AS_READ + ROUNDING ? null : verdict;
}

/**
 * Why a plan of brace heights may not be begun, in words.
 *
 * @equation the heights outside the range, the range with its origin, and what speaks against each side
 * @param bundle - the set-up with its records [record]
 * @param steps - heights of the plan [list]
 * @param units - the person's choice of units [record]
 * @returns title and detail; null when every height is inside [record]
 * @validity as braceOutside
 * @source common practice
 * @example bracePlanWords(exampleBundle, [0.127, 0.2159], defaultPreferences.units).title // "5 in is not tried: too low for this bow"
 */
export function bracePlanWords(
  { bow }: Pick<Bundle, 'bow'>,
  steps: readonly number[],
  units: UnitChoice,
): { readonly title: string; readonly detail: string; readonly makers: boolean } | null {
  const range = braceHeightRange(bow);
  const on = (side: 'low' | 'high') => steps.filter((step) => braceOutside(step, bow) === side);
  const [low, high] = [on('low'), on('high')];
  if (range === null || low.length + high.length === 0) return null;
  const text = (heights: readonly number[]) => together(heights.map((si) => textQuantity(si, 'length', units)));
  const is = (heights: readonly number[]) => `${text(heights)} ${heights.length === 1 ? 'is' : 'are'}`;
  const title =
    low.length === 0
      ? `${is(high)} not tried: too high for this bow`
      : high.length === 0
        ? `${is(low)} not tried: too low for this bow`
        : `${is([...low, ...high])} not tried: too low and too high for this bow`;
  return {
    title,
    detail: [
      originText(range, units),
      ...(low.length > 0 ? [TOO_LOW] : []),
      ...(high.length > 0 ? [TOO_HIGH] : []),
      `Take ${low.length + high.length === 1 ? 'it' : 'them'} out of the plan.`,
    ].join(' '),
    makers: range.from === 'maker',
  };
}

const TOO_LOW = 'Too low, the string slaps the wrist and the bow is louder; whether it strains the limbs too is disputed.';
const TOO_HIGH =
  'Too high, a string is wound past its twists or too short, and limbs and string are strained: only the bow maker can allow it.';

/** The range that holds, and whose it is. */
function originText(range: BraceRange, units: UnitChoice): string {
  const ends = rangeText(range.low, range.high, 'length', units, false);
  if (range.from === 'maker') return `The bow maker allows ${ends}.`;
  const checked = range.from === 'from memory' ? ' (not checked against a source)' : '';
  return `The maker\u2019s range is not on record: common practice for ${range.bows} is ${ends}${checked}, and no height outside it is tried here.`;
}
