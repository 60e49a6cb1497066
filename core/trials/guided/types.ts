import type { Finding, FindingAction, Why } from '../../findings/finding.ts';
import type { Bundle } from '../../model/bundle.ts';
import type { Id, Stamp } from '../../model/common.ts';
import type { ShotGroup } from '../../model/group.ts';
import type { UnitChoice } from '../../model/preferences.ts';
import type { Trial } from '../../model/trial.ts';
import type { Cause, NextStep } from '../reading.ts';
import type { TrialPlot } from './plot.ts';

/** What one arrow of this archer scatters, seen from the bow, and what that rests on. */
export interface SpreadAt {
  /** Standard deviation of one axis over the distance [rad]. */
  readonly perMetre: number;
  /** Of that figure; null for a guess, against which nothing is judged. */
  readonly degreesOfFreedom: number | null;
  /** In words: "6 groups at 18 m", or "a guess: ...". */
  readonly from: string;
}

/** A trial with all that it rests on. */
export interface TrialInput {
  readonly trial: Trial;
  readonly bundle: Bundle;
  /** The groups that the trial points to, by id; one that is not here counts as not shot yet. */
  readonly groups: ReadonlyMap<Id, ShotGroup>;
  readonly units: UnitChoice;
  readonly now: Stamp;
  /** From archerSpread; null where no groups are on record, and a guess is told as a guess. */
  readonly spread: SpreadAt | null;
}

/** What is read before the first arrow. */
export interface TrialBrief {
  readonly title: string;
  readonly purpose: string;
  readonly steps: readonly string[];
  /** Acknowledged before the first arrow. */
  readonly cautions: readonly string[];
  /** What is not on record and would make the plan a better one, each with the way to its field. */
  readonly asks: readonly { readonly text: string; readonly action: FindingAction }[];
  /** While one of these stands nothing is shot. */
  readonly stops: readonly Finding[];
  readonly canShow: readonly string[];
  readonly cannotShow: readonly string[];
  readonly disputed: readonly string[];
  /** In all, as planned. */
  readonly arrows: number;
}

/** Which data a row of the sheet wants. */
export type RowKind = 'first' | 'second' | 'tear' | 'clearance' | 'speeds';

export interface TrialRow {
  readonly key: string;
  readonly text: string;
  readonly done: boolean;
  /** How many of its arrows are there. */
  readonly shot: number;
  /** May be left out: nothing waits for it. */
  readonly optional: boolean;
  readonly place: { readonly distance: number; readonly step: number | null } | null;
  readonly which: RowKind;
  /** Counted from 1, with the number of ends of its kind and place; 1 of 1 where there are no ends. */
  readonly end: number;
  readonly of: number;
  /** How many arrows this row takes. */
  readonly arrows: number;
  readonly fletching: 'fletched' | 'bare';
  /** The group that its shots go to; null before the first of them, and for what is no group. */
  readonly group: Id | null;
}

/** The places of a trial in shooting order. */
export interface TrialSheet {
  readonly rows: readonly TrialRow[];
  /** Key of the next row that is wanted; null when all are done. */
  readonly next: string | null;
}

/** `stopped`: nothing may be shot; `void`: what was shot cannot be read; `too few`: more arrows would tell. */
export type TrialVerdict = 'read' | 'nothing shown' | 'too few' | 'void' | 'stopped';

export interface TrialFigure {
  readonly name: string;
  readonly value: string;
  /** The 95 % interval in words; empty where none applies. */
  readonly interval: string;
}

/** The effect of a change worked out beforehand, as a shift of the bare shafts [m]. Nothing does so yet, and nothing is invented in its place. */
export interface PredictedEffect {
  readonly across: number;
  readonly up: number;
  /** Half the width of its 95 % interval. */
  readonly half: number;
}

/** What a trial says. */
export interface TrialReading {
  readonly headline: string;
  readonly subline: string;
  readonly verdict: TrialVerdict;
  readonly figures: readonly TrialFigure[];
  readonly plot: TrialPlot | null;
  readonly causes: readonly Cause[];
  /** The one next change. */
  readonly next: NextStep;
  /** What else there is, in the trade's order. */
  readonly others: readonly NextStep[];
  readonly predicted: PredictedEffect | null;
  /** What to do when the change does not do what it should. */
  readonly ifNot: string;
  /** What would be a waste of arrows now. */
  readonly waste: string;
  readonly disputed: readonly string[];
  readonly more: { readonly arrows: number; readonly text: string } | null;
  readonly why: Why;
}
