import { ok, refuse, type Bundle, type Result } from '../model/index.ts';
import type { Band } from '../model/band.ts';
import { given } from '../model/given.ts';
import { defaultPreferences, type UnitChoice } from '../model/preferences.ts';
import { inch } from '../units/exact.ts';
import { rowFlags, type ReadingFlag } from './curve/flags.ts';
import { growthOver, type Growth } from './curve/growth.ts';
import { curveOfKind } from './curve/kindCurve.ts';
import { lossBetween, type DrawLoss } from './curve/letDown.ts';
import { notRising } from './curve/notRising.ts';
import { bracesOf, curveOfReadings, NO_FORCE, type Braces, type OfReadings } from './curve/ofReadings.ts';
import type { Curve } from './curve/readCurve.ts';
import { pointsRead } from './curve/rows.ts';
import { forceNotes } from './forceNotes.ts';
import { kindFigures } from './kinds.ts';
import { AMO_ADDS, powerStroke } from './stroke.ts';
import { drawWeight, weightDoubt } from './weight.ts';

/** The force-draw curve of a bow at an archer's draw, and what follows from it. Draws are AMO draws. */
export interface ForceDraw {
  readonly from: 'readings' | 'weight on the fingers' | 'marked weight';
  /** String to pivot [m]. */
  readonly brace: number;
  /** AMO draw of this archer [m]. */
  readonly full: number;
  readonly stroke: number;
  /** At an AMO draw: nothing at the brace height; the band has width only where nothing was read. */
  readonly force: (draw: number) => Band;
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

export type ForceInput = Pick<Bundle, 'bow' | 'archer' | 'setup'>;

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
  const { bow, archer, setup } = input;
  const braces = bracesOf(bow, setup.settings);
  const figures = given('the force-draw curve', { drawLength: archer.drawLength, braceHeight: braces?.now ?? null });
  if (!figures.ok) return figures;
  const full = figures.value.drawLength;
  const stroke = powerStroke(full, figures.value.braceHeight);
  if (!stroke.ok || braces === null) return stroke.ok ? refuse('missing', 'Enter a brace height.', 'braceHeight') : stroke;
  for (const { draw, force } of bow.forceDraw) {
    const reading = given('the force-draw curve', { readingDraw: draw, readingForce: force });
    if (!reading.ok) return reading;
  }
  const read = curveOfReadings(bow, setup.settings, braces, full);
  const found = read === null ? expected(input, braces, full) : ok({ from: 'readings' as const, curve: read.curve });
  if (!found.ok) return found;
  const { from, curve } = found.value;
  const doubt = from === 'readings' ? weightDoubt.scale : 0;
  const doubted = ({ value, low, high }: Band): Band => ({ value, low: low * (1 - doubt), high: high * (1 + doubt) });
  const weight = doubted(curve.force(full));
  const energy = doubted(curve.energy);
  if (!(weight.value >= NO_FORCE && energy.value >= NO_FORCE))
    return refuse('no force', 'These readings leave no force at full draw. Read the bow on the scale again.', 'forceDraw');
  const brace = braces.now + AMO_ADDS;
  const value = (draw: number) => curve.force(draw).value;
  const growth = growthOver(value, brace, read === null ? full : Math.max(Math.min(full, read.last), brace + 2 * LAST));
  return ok({
    from,
    brace: braces.now,
    full,
    stroke: stroke.value,
    force: curve.force,
    slope: curve.slope,
    weight,
    energy,
    fullness: energy.value / (weight.value * stroke.value),
    perLength: (weight.value - value(full - LAST)) / LAST,
    growth: { least: growth.least, most: growth.most },
    stacksFrom: read !== null && tellsStacking(read, brace, full) && bow.bowKind !== 'compound' ? growth.stacksFrom : null,
    smoothness: growth.smoothness,
    ...ofRows(input, braces, full, read, units),
    notes: forceNotes(bow, braces, read, full, units),
  });
}

const tellsStacking = ({ points, last }: OfReadings, brace: number, full: number): boolean =>
  points.filter(({ draw }) => draw >= (brace + Math.min(full, last)) / 2).length >= TELLS_STACKING;

/** Without a usable reading: what the kind lets expect of the weight. */
function expected(
  { bow, archer, setup }: ForceInput,
  braces: Braces,
  full: number,
): Result<{ readonly from: ForceDraw['from']; readonly curve: Curve }> {
  const kind = kindFigures[bow.bowKind];
  if (kind === null)
    return refuse(
      'compound',
      'A compound\u2019s curve follows from its cams. Read it on a scale at three draws or more, up to full draw.',
      'forceDraw',
    );
  const weight = drawWeight(bow, archer, setup.settings);
  if (!weight.ok) return weight;
  const curve = curveOfKind(kind, weight.value, { brace: braces.now + AMO_ADDS, full, shift: 0 });
  return ok({ from: weight.value.from === 'marked weight' ? 'marked weight' : 'weight on the fingers', curve });
}

/** What the rows of the table come to, one by one. */
function ofRows(
  { bow }: ForceInput,
  braces: Braces,
  full: number,
  read: OfReadings | null,
  units: UnitChoice,
): Pick<ForceDraw, 'loss' | 'used' | 'flags'> {
  const { forceDraw } = bow;
  if (forceDraw.length === 0) return { loss: null, used: [], flags: [] };
  const brace = braces.read + AMO_ADDS;
  const drawn = read ?? pointsRead(forceDraw, 'draw', brace);
  const down = pointsRead(forceDraw, 'let-down', brace);
  const kept = read?.asRead == null || down.points.length === 0 ? null : lossBetween(down.points, brace, read.asRead(), units);
  const flags = [
    ...rowFlags(forceDraw, drawn, brace, full, units),
    ...rowFlags(forceDraw, down, brace, full, units),
    ...(bow.bowKind === 'compound' ? [] : notRising(drawn.points, units)),
    ...(kept?.flags ?? []),
  ];
  return {
    loss: kept?.loss ?? null,
    used: (read?.points ?? []).flatMap(({ rows }) => rows).sort((a, b) => a - b),
    flags: flags.sort((a, b) => a.index - b.index),
  };
}
