import { ok, type Result } from '../model/index.ts';
import type { Band } from '../model/band.ts';
import { defaultPreferences, type UnitChoice } from '../model/preferences.ts';
import { inch } from '../units/exact.ts';
import { drawnOf, letDownOf, type Drawn, type ForceInput } from './curve/drawn.ts';
import { rowFlags, type ReadingFlag } from './curve/flags.ts';
import { growthOver, type Growth } from './curve/growth.ts';
import type { DrawLoss } from './curve/letDown.ts';
import { notRising } from './curve/notRising.ts';
import type { OfReadings } from './curve/ofReadings.ts';
import { pointsRead } from './curve/rows.ts';
import { forceNotes } from './forceNotes.ts';
import { AMO_ADDS } from './stroke.ts';

export type { ForceInput } from './curve/drawn.ts';

/** The force-draw curve of a bow at an archer's draw, and what follows from it. Draws are AMO draws. */
export interface ForceDraw {
  readonly from: Drawn['from'];
  /** String to pivot [m]. */
  readonly brace: number;
  /** AMO draw of this archer [m]. */
  readonly full: number;
  readonly stroke: number;
  /** At an AMO draw: nothing at the brace height; the band has width only where nothing was read. */
  readonly force: (draw: number) => Band;
  /** The same without its band, for whoever asks at many draws [N]. */
  readonly value: (draw: number) => number;
  /** At an AMO draw [N/m]. */
  readonly slope: (draw: number) => number;
  /** At full draw, with what a scale or a mark may be out by [N]. */
  readonly weight: Band;
  /** Stored from the brace height to full draw, with the same doubt [J]. */
  readonly energy: Band;
  /** Energy over weight times stroke [-]. */
  readonly fullness: number;
  /** Growth over the last 2 in before full draw [N/m]. */
  readonly perLength: number;
  /** Least and greatest growth over any 2 in of the later half of this archer's stroke, as far as it was read [N/m]. */
  readonly growth: Pick<Growth, 'least' | 'most'>;
  /** AMO draw from which the bow stacks; null where it does not, or where too little was read to tell [m]. */
  readonly stacksFrom: number | null;
  /** Least over greatest growth in the later half of the stroke: 1 where every inch adds the same [-]. */
  readonly smoothness: number;
  /** From readings of letting down. */
  readonly loss: DrawLoss | null;
  /** Which of the bow's readings the curve goes through. */
  readonly used: readonly number[];
  readonly flags: readonly ReadingFlag[];
  /** What the curve rests on beyond the readings, ready to read. */
  readonly notes: readonly string[];
}

const LAST = 2 * inch;
/** Fewer readings than this in the later half of the stroke cannot tell stacking from a careless reading. */
const TELLS_STACKING = 4;

/**
 * The force-draw curve of this bow at this archer's draw, and what follows from it: stored energy, growth per inch, where it stacks, what it keeps.
 *
 * @equation readCurve through the readings off the scale; else curveOfKind for the weight on the fingers or the marked weight; E = ∫F du from brace height to full draw, ± 1 % for the scale; fullness = E/(F d)
 * @param input - bow, archer and setup [record]
 * @param units - the person's choice of units, for the sentences [record]
 * @returns the curve, draws as AMO draws [m], forces [N], energies [J], with flags for odd readings [record]
 * @validity any bow that was read; without readings finger bows only. A compound's weight at full draw is what it holds there, and its fullness may pass 1. The refusal names what is missing
 * @source own derivation
 * @example forceDrawOf(exampleBundle).value.fullness // 0.581
 */
export function forceDrawOf(input: ForceInput, units: UnitChoice = defaultPreferences.units): Result<ForceDraw> {
  const drawn = drawnOf(input);
  if (!drawn.ok) return drawn;
  const { from, braces, full, stroke, read, curve, weight, energy } = drawn.value;
  const { bow } = input;
  const brace = braces.now + AMO_ADDS;
  const { force, value, slope } = curve;
  const growth = growthOver(value, brace, read === null ? full : Math.max(Math.min(full, read.last), brace + 2 * LAST));
  return ok({
    from,
    brace: braces.now,
    full,
    stroke,
    force,
    value,
    slope,
    weight,
    energy,
    fullness: energy.value / (weight.value * stroke),
    perLength: (weight.value - value(full - LAST)) / LAST,
    growth: { least: growth.least, most: growth.most },
    stacksFrom: read !== null && tellsStacking(read, brace, full) && bow.bowKind !== 'compound' ? growth.stacksFrom : null,
    smoothness: growth.smoothness,
    ...ofRows(input, drawn.value, units),
    notes: forceNotes(bow, braces, read, full, units),
  });
}

const tellsStacking = ({ points, last }: OfReadings, brace: number, full: number): boolean =>
  points.filter(({ draw }) => draw >= (brace + Math.min(full, last)) / 2).length >= TELLS_STACKING;

/** What the rows of the table come to, one by one. */
function ofRows(input: ForceInput, found: Drawn, units: UnitChoice): Pick<ForceDraw, 'loss' | 'used' | 'flags'> {
  const { forceDraw, bowKind } = input.bow;
  if (forceDraw.length === 0) return { loss: null, used: [], flags: [] };
  const { braces, full, read } = found;
  const brace = braces.read + AMO_ADDS;
  const drawn = read ?? pointsRead(forceDraw, 'draw', brace);
  const down = pointsRead(forceDraw, 'let-down', brace);
  const kept = letDownOf(input, found, units);
  const flags = [
    ...rowFlags(forceDraw, drawn, brace, full, units),
    ...rowFlags(forceDraw, down, brace, full, units),
    ...(bowKind === 'compound' ? [] : notRising(drawn.points, units)),
    ...(kept?.flags ?? []),
  ];
  return {
    loss: kept?.loss ?? null,
    used: (read?.points ?? []).flatMap(({ rows }) => rows).sort((a, b) => a - b),
    flags: flags.sort((a, b) => a.index - b.index),
  };
}
