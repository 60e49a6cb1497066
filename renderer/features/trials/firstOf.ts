import { braceHeightFinding, braceStanding, shootingStops, type FindingAction } from '../../../core/findings/index.ts';
import type { Bundle } from '../../../core/model/bundle.ts';
import type { UnitChoice } from '../../../core/model/preferences.ts';
import type { Trial, TrialKind } from '../../../core/model/trial.ts';
import { textQuantity } from '../../../core/units/index.ts';

interface FirstThing {
  readonly headline: string;
  readonly subline: string;
  /** Which trial is the one to begin with; null while something else comes first. */
  readonly kind: TrialKind | null;
  /** What mends that something else. */
  readonly action: FindingAction | null;
  /** The trial that goes on. */
  readonly open: Trial | null;
}

/** What is most useful next, by the order of the trade: a stop, the brace height, a trial that goes on, the bare shaft. */
export function firstOf(bundle: Bundle, trials: readonly Trial[], units: UnitChoice): FirstThing {
  const [stop] = shootingStops(bundle, units);
  if (stop !== undefined)
    return {
      headline: `Nothing is shot yet: ${lowered(stop.title)}`,
      subline: stop.detail,
      kind: null,
      action: stop.action,
      open: null,
    };
  const { value, verdict } = braceStanding(bundle);
  if (value !== null && (verdict === 'low' || verdict === 'high'))
    return {
      headline: `Brace height first: ${textQuantity(value, 'length', units)} is ${verdict}`,
      subline: 'It is brought into its range before any other change; every reading after it rests on it.',
      kind: null,
      action: braceHeightFinding(bundle, units)?.action ?? null,
      open: null,
    };
  const open = trials.find(({ ended }) => ended === null);
  if (open !== undefined)
    return {
      headline: `\u201c${open.name}\u201d goes on`,
      subline: 'One change at a time: end a trial, or leave it and take it up again from the left column.',
      kind: null,
      action: null,
      open,
    };
  return {
    headline: 'Begin with bare shafts',
    subline:
      'They show the height of the nocking point before anything is turned sideways. Each trial is planned before it is shot.',
    kind: 'bare shaft',
    action: null,
    open: null,
  };
}

const lowered = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);
