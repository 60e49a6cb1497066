import type { FindingAction, Why } from '../findings/finding.ts';
import type { Shift } from '../group/index.ts';
import type { Problem } from '../model/problem.ts';
import type { Settings } from '../model/setup.ts';
import type { ContextDifference } from './context.ts';

/** One thing to do next, and what to shoot after it. It promises a direction, never a size that nothing has measured. */
export interface NextStep {
  readonly kind: 'stop' | 'again' | 'measure' | 'shoot' | 'leave' | 'change';
  readonly title: string;
  readonly text: string;
  readonly then: string;
  /** What the set-up's settings become when it is noted as done; null when no setting on record moves. */
  readonly patch: Partial<Settings> | null;
  readonly caution: string | null;
  /** `common practice`, `from memory`, or a citation. */
  readonly mark: string;
  readonly why: Why;
  /** The field in which what is measured goes on record; null where there is none. */
  readonly go: FindingAction | null;
}

export interface Cause {
  readonly cause: string;
  readonly evidenceFor: readonly string[];
  readonly evidenceAgainst: readonly string[];
}

/** What a bare group says beside a fletched one. */
export interface Reading {
  readonly headline: string;
  readonly subline: string;
  readonly shift: Shift | null;
  /** Why there is no reading; null when there is one. */
  readonly problem: Problem | null;
  readonly differences: readonly ContextDifference[];
  readonly lateral: 'stiff' | 'weak' | null;
  readonly vertical: 'nocking point high' | 'nocking point low' | null;
  /** The bare group scatters far wider than the fletched one: release or clearance, and no setting is read from it. */
  readonly erratic: boolean;
  readonly causes: readonly Cause[];
  readonly next: NextStep;
  readonly others: readonly NextStep[];
  readonly why: Why;
}

/** What one fletched or bare group says beside another of its kind. */
export interface TwoGroups {
  readonly headline: string;
  readonly subline: string;
  readonly shift: Shift | null;
  readonly problem: Problem | null;
  readonly differences: readonly ContextDifference[];
  readonly why: Why;
}
