/** How a finding stands. A stop may not be passed over; a caution stays until it is answered; unknown is shown and never assumed sound. */
export type Level = 'stop' | 'caution' | 'unknown' | 'waiting' | 'ok';

/** What opens behind *Why*: the rule or equation, its symbols with today's values and units, and where it comes from. */
export interface Why {
  readonly title: string;
  readonly text: string;
  readonly equation: string | null;
  readonly symbols: readonly { readonly symbol: string; readonly name: string; readonly value: string }[];
  /** A citation out of core/sources.ts, or the mark `common practice`, `from memory`, `own derivation`. */
  readonly source: string;
}

/** The little rule under a finding: where the value stands against its limits. Plain numbers in one unit; the texts are ready to print. */
export interface FindingRule {
  readonly value: number;
  readonly low: number | null;
  readonly high: number | null;
  readonly min: number;
  readonly max: number;
  readonly lowText: string;
  readonly highText: string;
}

export type Screen = 'first' | 'bow' | 'arrow' | 'groups' | 'trials' | 'aim' | 'compare' | 'record';

/** What mends a finding: a field to go to, or an act that the bench can note. */
export type FindingAction =
  | { readonly kind: 'go'; readonly label: string; readonly screen: Screen; readonly field: string }
  | { readonly kind: 'look over'; readonly label: string; readonly what: 'bow' | 'arrowSet' };

export interface Finding {
  readonly id: string;
  readonly level: Level;
  readonly title: string;
  readonly detail: string;
  readonly rule: FindingRule | null;
  /** For the narrow strip: a mark, a figure, one word. */
  readonly short: { readonly figure: string; readonly word: string };
  readonly why: Why | null;
  readonly action: FindingAction | null;
}
