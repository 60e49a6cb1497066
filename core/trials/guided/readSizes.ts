import { squareText } from '../../findings/nockingPoint.ts';
import { textQuantity } from '../../units/index.ts';
import { acrossText, chanceSentence, countText } from '../words.ts';
import { countFigures, sizeFigure } from './figures.ts';
import { placesShot } from './places.ts';
import type { SettingPoint } from './plot.ts';
import { sizedSets } from './sizedSets.ts';
import { sizesCompared, type SizesCompared } from './sizes.ts';
import type { TrialFigure, TrialInput, TrialReading } from './types.ts';

const SESSION = 60;

/** Spreads against a setting, in words and figures. */
export interface SizesTold {
  readonly compared: SizesCompared;
  readonly points: readonly SettingPoint[];
  readonly figures: readonly TrialFigure[];
  /** Settings that are not told from the tightest; all of them where no difference is shown. */
  readonly best: readonly number[];
  readonly headline: string;
  readonly subline: string;
  readonly more: TrialReading['more'];
}

/**
 * Group size against a setting: which settings are among the tightest, or that none is told from the others.
 *
 * @equation sizesCompared over sizedSets
 * @param input - the trial with its records [record]
 * @param heightOnly - whether only the height counts, as in a row along an edge [choice]
 * @returns words and figures; null with fewer than two settings that can be read [record]
 * @validity as sizesCompared: a smallest group that is within the noise is never called the smallest
 * @source levene-1960
 * @example readSizes(exampleTrial('brace height'), false) // null
 */
export function readSizes(input: TrialInput, heightOnly: boolean): SizesTold | null {
  const { units, trial } = input;
  const places = placesShot(input);
  const sets = sizedSets(places, heightOnly);
  if (sets.length < 2) return null;
  const compared = sizesCompared(sets);
  const points = sets.map(({ setting, arrows }, i): SettingPoint => {
    const spread = compared.spreads[i] ?? { value: 0, low: 0, high: 0 };
    return { ...spread, setting, arrows, amongBest: compared.best?.[i] ?? null };
  });
  const best = points.filter(({ amongBest }) => amongBest !== false).map(({ setting }) => setting);
  const nocking = trial.trial === 'nocking point';
  const name = (setting: number) => (nocking ? squareText(setting, units) : textQuantity(setting, 'length', units));
  const far = Math.max(...places.map(({ distance }) => distance));
  const at = textQuantity(far, 'distance', units);
  const what = heightOnly ? 'Height' : 'Spread';
  return {
    compared,
    points,
    best,
    figures: [
      ...points.map(({ setting, value, low, high }) => sizeFigure(`${what} at ${name(setting)}`, value, low, high, units)),
      ...countFigures(input, `${countsText(points)}, spreads at ${at}`),
    ],
    ...words(compared, points, name, nocking ? 'nocking point' : 'brace height', units),
    more: moreOf(compared, points),
  };
}

/** "12 at each", or "12, 11, 12" in the order of the settings. */
function countsText(points: readonly SettingPoint[]): string {
  const counts = points.map(({ arrows }) => arrows);
  return new Set(counts).size === 1 ? `${counts[0] ?? 0} at each` : counts.join(', ');
}

function words(
  { p, best }: SizesCompared,
  points: readonly SettingPoint[],
  name: (setting: number) => string,
  what: string,
  units: TrialInput['units'],
): Pick<SizesTold, 'headline' | 'subline'> {
  const [low, high] = [Math.min(...points.map(({ value }) => value)), Math.max(...points.map(({ value }) => value))];
  const chance = p === null ? '' : ` ${chanceSentence(p)}`;
  if (best === null)
    return {
      headline: `No ${what} groups tighter than another`,
      subline: `Spreads of ${acrossText(low, units)} to ${acrossText(high, units)} are within the noise.${chance}`,
    };
  const among = points.filter(({ amongBest }) => amongBest === true);
  const [first] = among;
  const tightest = among.reduce((a, b) => (b.value < a.value ? b : a), first ?? { value: 0, low: 0, high: 0, setting: 0 });
  if (among.length === 1)
    return {
      headline: `Groups are tightest at ${name(tightest.setting)}, and that is real`,
      subline: `One spread is ${acrossText(tightest.value, units)} there, and told from every other ${what}.${chance}`,
    };
  return {
    headline: `Groups differ; ${among.length} of ${points.length} are among the tightest`,
    subline: `Not told apart: ${among.map(({ setting }) => name(setting)).join(', ')}. Told from the tightest: ${
      points
        .filter(({ amongBest }) => amongBest === false)
        .map(({ setting }) => name(setting))
        .join(', ') || 'none by itself'
    }.${chance}`,
  };
}

function moreOf({ best, arrows }: SizesCompared, points: readonly SettingPoint[]): TrialReading['more'] {
  if (best !== null || arrows === null) return null;
  const missing = arrows - Math.min(...points.map((point) => point.arrows));
  // More than a session at each: then tighter groups would tell sooner than more of the same.
  if (missing <= 0 || missing > SESSION) return null;
  return {
    arrows: missing * points.length,
    text: `If the widest and the tightest are truly as they look, about ${countText(missing)} more at each would tell it.`,
  };
}
