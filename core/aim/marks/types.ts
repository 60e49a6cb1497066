import type { Band } from '../../model/band.ts';
import type { Problem } from '../../model/problem.ts';

/** One known mark: the distance that it was shot in at, and what the scale read. */
export interface KnownMark {
  /** From the eye along level ground [m]. */
  readonly distance: number;
  /** In the scale's own numbers. */
  readonly reading: number;
  /** How many arrows settled it; `usualShots` when left out. */
  readonly shots?: number;
  /** Somebody took it out: it is still held against the others, but not counted. */
  readonly leftOut?: boolean;
}

/** The scale on the sight's bar. */
export interface SightScale {
  /** One unit of the scale [m]. */
  readonly unit: number;
  /** Whether the numbers grow as the pin moves down, as it does for farther targets, or up. */
  readonly grows: 'down' | 'up';
  /** The ends of the bar in the scale's numbers, where they are known. */
  readonly lowest?: number;
  readonly highest?: number;
}

/** What is held of the figures before any mark was shot: the ends of each band are taken as 95 %. */
export interface MarkPriors {
  /** Launch speed [m/s]. */
  readonly speed: Band;
  /** From the arrow's axis up to the eye [m]. */
  readonly eyeHeight: Band;
  /** Drag parameter [1/m]. */
  readonly k: Band;
  /** From the eye to the pin along the arrow [m]. */
  readonly sightRadius: Band;
  /** Standard deviation of the archer's arrows up and down, as an angle [rad]. */
  readonly spreadPerMetre: number;
}

/** A figure with its standard deviation, in the figure's unit. */
export interface FittedFigure {
  readonly value: number;
  readonly sd: number;
}

/**
 * What the other marks say of one: `one of these` when leaving out any of several would put the rest right, so that none of them can be blamed;
 * `alone` when there is no other that counts.
 */
export type MarkVerdict = 'fits' | 'does not fit' | 'one of these' | 'alone';

export interface JudgedMark extends KnownMark {
  /** Where the others let it be expected, with 95 %; null without others. In the scale's numbers. */
  readonly expected: Band | null;
  readonly verdict: MarkVerdict;
  /** The chance of missing the others by as much, when all is well. */
  readonly p: number;
}

/** The five unknowns in the order of the covariance: ln v, e, ln k, r and the pin's place at a level arrow, lengths in metres. */
export type MarkParameters = readonly [logSpeed: number, eyeHeight: number, logK: number, sightRadius: number, zero: number];

/** Plain data, so that a worker can hand it on. */
export interface FittedMarks {
  /** Those that count. */
  readonly marks: readonly KnownMark[];
  readonly scale: SightScale;
  readonly priors: MarkPriors;
  readonly parameters: MarkParameters;
  readonly covariance: readonly (readonly number[])[];
  readonly figures: {
    readonly speed: FittedFigure;
    readonly eyeHeight: FittedFigure;
    readonly k: FittedFigure;
    readonly sightRadius: FittedFigure;
    /** What the scale reads with the pin level with the arrow's direction, in its own numbers. */
    readonly zero: FittedFigure;
  };
  /** How many times wider than their errors say the marks miss, at least 1: every interval carries it. */
  readonly wider: number;
  /** All that were given, in their order. */
  readonly judged: readonly JudgedMark[];
  /** What a person must know of this fit: whose figures lead, what does not fit, what turns back. */
  readonly notes: readonly Problem[];
}
