import { AMO_ADDS } from '../bow/index.ts';
import { ok, type Archer, type Result } from '../model/index.ts';
import { given } from '../model/given.ts';
import { inch } from '../units/exact.ts';
import { judgedAsLearner } from './learner.ts';
import type { SafetyLevel } from './level.ts';

/** The limits of the rules below. Common practice. */
export const pointAheadLimits = {
  /** Every archer: the end of the shaft this far ahead of the rest at the deepest draw [m]. */
  aheadOfRest: 0.005,
  /** Without a clicker, or for a learner: the shaft this much longer than the AMO draw, or a stop [m]. */
  beyondDraw: 1 * inch,
  /** A learner: this much longer, or a caution [m]. */
  beyondDrawLearner: 2 * inch,
  /** Without a clicker, or for a learner: less than this ahead at the deepest draw is a caution [m]. */
  aheadAtDeepest: 1 * inch,
} as const;

/** A length typed in another unit may miss its limit by a rounding error. */
const ROUNDING = 1e-6;

export interface ReachInput {
  /** Throat of the nock to end of shaft [m]. */
  readonly arrowLength: number | null;
  /** AMO [m]. */
  readonly drawLength: number | null;
  /** The end of the shaft ahead of the rest at the deepest draw, as a helper measured it [m]. */
  readonly measured: number | null;
}

export interface PointAhead {
  readonly value: number;
  readonly from: 'measured' | 'reckoned';
}

/**
 * How far the end of the shaft stands ahead of the rest at full draw: as measured, else from arrow and draw.
 *
 * @equation a = a_measured, or a = L − (D_AMO − 1.75 in)
 * @param input - arrowLength L [m], drawLength D_AMO [m], measured a [m] [record]
 * @returns a [m], negative behind the rest, and where it is from [record]
 * @validity reckoned for a rest at the pivot point and a draw that is no deeper than the recorded one; the refusal names what is missing
 * @source astm-f1880
 * @example pointAheadOfRest({ arrowLength: 0.7366, drawLength: 0.7112, measured: null }).value.value // 0.06985
 */
export function pointAheadOfRest(input: ReachInput): Result<PointAhead> {
  if (input.measured !== null) {
    const read = given('the reach of the arrow', { pointAhead: input.measured });
    return read.ok ? ok({ value: input.measured, from: 'measured' }) : read;
  }
  const figures = given('the reach of the arrow', { arrowLength: input.arrowLength, drawLength: input.drawLength });
  if (!figures.ok) return figures;
  return ok({ value: figures.value.arrowLength - (figures.value.drawLength - AMO_ADDS), from: 'reckoned' });
}

/** Which rule spoke: the worst of those that hold for this archer. */
export type ReachRule =
  | 'behind the rest'
  | 'barely ahead of the rest'
  | 'too short for the draw'
  | 'measured against reckoned'
  | 'little ahead at the deepest draw'
  | 'short for a learner';

export interface PointAheadCheck {
  readonly level: SafetyLevel;
  /** Null when nothing was found. */
  readonly rule: ReachRule | null;
  /** End of the shaft ahead of the rest [m], null when unknown. */
  readonly ahead: PointAhead | null;
  /** Shaft less AMO draw [m], null when unknown. */
  readonly beyondDraw: number | null;
  /** The limit of the rule that spoke, and what it is a limit of; null when nothing was found. */
  readonly limit: { readonly value: number; readonly of: 'ahead of the rest' | 'beyond the draw' } | null;
  /** Why the level is unknown, ready to read; null otherwise. */
  readonly why: string | null;
}

type Ruling = Pick<PointAheadCheck, 'level' | 'rule' | 'limit'>;

const ruling = (level: SafetyLevel, rule: ReachRule, value: number, of: 'ahead of the rest' | 'beyond the draw'): Ruling => ({
  level,
  rule,
  limit: { value, of },
});

const nothingFound: Ruling = { level: 'in range', rule: null, limit: null };

const worst = (ahead: PointAhead, beyondDraw: number | null, learner: boolean, byLength: boolean): Ruling => {
  const { aheadOfRest, aheadAtDeepest, beyondDraw: least, beyondDrawLearner } = pointAheadLimits;
  if (ahead.value <= 0) return ruling('stop', 'behind the rest', aheadOfRest, 'ahead of the rest');
  if (ahead.value < aheadOfRest - ROUNDING) return ruling('stop', 'barely ahead of the rest', aheadOfRest, 'ahead of the rest');
  if (byLength && beyondDraw !== null && beyondDraw < least - ROUNDING)
    return ruling('stop', 'too short for the draw', least, 'beyond the draw');
  // A reach may have been measured before the arrows were cut, or with others: then it must not hide what arrow and draw say.
  if (ahead.from === 'measured' && beyondDraw !== null && beyondDraw + AMO_ADDS < aheadOfRest - ROUNDING)
    return ruling('caution', 'measured against reckoned', aheadOfRest, 'ahead of the rest');
  if (!byLength) return nothingFound;
  if (ahead.value < aheadAtDeepest - ROUNDING)
    return ruling('caution', 'little ahead at the deepest draw', aheadAtDeepest, 'ahead of the rest');
  if (learner && beyondDraw !== null && beyondDraw < beyondDrawLearner - ROUNDING)
    return ruling('caution', 'short for a learner', beyondDrawLearner, 'beyond the draw');
  return nothingFound;
};

/**
 * Whether an arrow is long enough for this archer: an arrow drawn off its rest can lodge behind it and break into the hand.
 *
 * @equation stop: less than 5 mm ahead of the rest; without a clicker or for a learner: stop under AMO draw + 1 in, caution under 1 in ahead as measured at the deepest draw; a learner: caution under AMO draw + 2 in; caution when the measured reach passes and the reckoned one does not
 * @param archer - experience and clicker [record]
 * @param reach - arrowLength [m], drawLength, AMO [m], and the measured point ahead of the rest [m] [record]
 * @returns level, the worst rule that spoke with its limit [m], and the figures [m] [record]
 * @validity an archer of unnoted experience counts as a learner; unknown, with a sentence, when the figures are missing or outside the model's limits; a learner or an archer without a clicker stays unknown on a measured reach alone, since the rule is about arrow and draw
 * @source common practice
 * @example pointAheadCheck({ experience: 'settled', clicker: false }, { arrowLength: 0.72, drawLength: 0.7112, measured: null }).rule // "too short for the draw"
 */
export function pointAheadCheck(archer: Pick<Archer, 'experience' | 'clicker'>, reach: ReachInput): PointAheadCheck {
  const learner = judgedAsLearner(archer);
  const byLength = learner || !archer.clicker;
  const lengths = given('a check of the arrow against the draw', {
    arrowLength: reach.arrowLength,
    drawLength: reach.drawLength,
  });
  const beyondDraw = lengths.ok ? lengths.value.arrowLength - lengths.value.drawLength : null;
  const ahead = pointAheadOfRest(reach);
  if (!ahead.ok) return { level: 'unknown', rule: null, limit: null, ahead: null, beyondDraw, why: ahead.problem.sentence };
  const found = { ...worst(ahead.value, beyondDraw, learner, byLength), ahead: ahead.value, beyondDraw };
  // A measured reach can stop anyone, but where the rule is about arrow and draw it clears nobody by itself.
  if (found.level === 'in range' && byLength && !lengths.ok) return { ...found, level: 'unknown', why: lengths.problem.sentence };
  return { ...found, why: null };
}
