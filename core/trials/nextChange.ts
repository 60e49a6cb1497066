import { stopsOf } from '../findings/all.ts';
import { braceStanding } from '../findings/braceHeight.ts';
import type { Shift } from '../group/index.ts';
import { textQuantity } from '../units/index.ts';
import { braceStep } from './braceStep.ts';
import { changedSince } from './changedSince.ts';
import type { Evidence } from './evidence.ts';
import { nockingStep } from './nockingStep.ts';
import type { NextStep } from './reading.ts';
import { clearanceStep, heightRemedies, sideRemedies } from './remedies.ts';
import { sideStep } from './sideStep.ts';
import { acceptedWords, atDistance, leaveStep, shootMoreStep } from './shootSteps.ts';
import { howMany, shootAgain, stepOf } from './step.ts';
import { tillerStep } from './tillerStep.ts';
import { voidStep } from './voidStep.ts';
import { acrossText } from './words.ts';

export interface NextChange {
  readonly next: NextStep;
  readonly others: readonly NextStep[];
}

/** A sideways shift past so many mean radii of the fletched group is turned out by halves, not quarters. Our reading of the trade's "half, then quarter". */
const LARGE = 2;

/**
 * The one next change, and what else there is, by the order of the trade.
 *
 * @equation stop; void; brace height; tiller; changed since; erratic; height; side; more arrows; leave
 * @param evidence - set-up, groups, shift and reading [record]
 * @returns the next step and the further remedies [record]
 * @validity one change at a time; no size of an effect is foretold
 * @source common practice
 * @example nextChange({ bundle: exampleBundle, fletched: exampleFletched, bare: exampleBare, units: defaultPreferences.units, problem: null, shift: null, lateral: null, vertical: null, erratic: true, fletchedRadius: 0.02, fletchedFarthest: 0.03 }).next.kind // "stop"
 */
export function nextChange(evidence: Evidence): NextChange {
  const { bundle, fletched, bare, units, problem, shift, lateral, vertical, erratic } = evidence;
  const then = shootAgain(fletched, bare, units);
  const only = (next: NextStep): NextChange => ({ next, others: [] });

  const stop = stopsOf(bundle, units)[0];
  if (stop !== undefined) return only(stepOf('stop', stop.title, stop.detail, { rule: stop.why?.text ?? stop.detail }));
  const brace = braceStep(bundle, units, then);
  if (problem !== null) {
    const next = voidStep(problem, fletched, bare, units);
    // Nothing is shot again with a bow outside its maker's range.
    if (brace !== null && braceStanding(bundle).level === 'stop') return { next: brace, others: [next] };
    return {
      next: brace !== null && next.then !== '' ? afterBrace(next, evidence) : next,
      others: brace === null ? [] : [brace],
    };
  }
  if (brace !== null) return only(brace);
  const tiller = tillerStep(bundle, units, then);
  if (tiller !== null) return only(tiller);
  const changed = changedSince(evidence);
  if (changed !== null)
    return only(stepOf('again', `Shoot ${howMany(fletched, bare)} again`, changed, { then: atDistance(evidence) }));
  if (erratic) return only(clearanceStep('stop', then));
  if (shift === null)
    return only(
      stepOf('again', `Shoot ${howMany(fletched, bare)}`, 'There is no shift to read yet.', { then: atDistance(evidence) }),
    );
  if (shift.verdict !== 'real')
    return only(shift.verdict === 'no sign' ? leaveStep(shift, evidence) : shootMoreStep(shift, evidence));

  const radius = evidence.fletchedRadius ?? 0;
  const accepted = acceptedWords(shift, evidence);
  const kept =
    accepted === null
      ? []
      : [stepOf('leave', 'Or leave it', accepted, { then: 'Take a snapshot, so that this can be found again.' })];
  if (vertical !== null) {
    const next = nockingStep(bundle, vertical, Math.abs(shift.dy) < radius, units, then);
    return choice(next, [...kept, ...heightRemedies(vertical, then)], shift, evidence, accepted);
  }
  if (lateral !== null) {
    const further = sideRemedies(bundle, lateral, units, then);
    const side = sideStep(bundle, lateral, Math.abs(shift.dx) > LARGE * radius, units, then);
    const all = side === null ? further : [side, ...further];
    // A remedy that is barred stays on the list as a stop, but is not what to do next.
    const first = all.find(({ kind }) => kind === 'change');
    if (first !== undefined) return choice(first, [...kept, ...all.filter((step) => step !== first)], shift, evidence, accepted);
  }
  return only(shootMoreStep(shift, evidence));
}

function afterBrace(next: NextStep, { bundle, units }: Evidence): NextStep {
  const { value, verdict } = braceStanding(bundle);
  const first =
    value === null
      ? 'Measure the brace height first.'
      : `Mend the brace height first: it is ${textQuantity(value, 'length', units)}, ${verdict}.`;
  return { ...next, text: `${next.text} ${first}` };
}

/** Real, and believably smaller than what matters: then leaving it comes first, and the change is offered. */
function choice(
  next: NextStep,
  others: readonly NextStep[],
  shift: Shift,
  evidence: Evidence,
  accepted: string | null,
): NextChange {
  if (shift.largest <= shift.matters)
    return {
      next: stepOf(
        'leave',
        'Leave it: too small to matter',
        `Real, but at most ${acrossText(shift.largest, evidence.units)}, less than a mean radius.`,
        {
          then: 'Take a snapshot, so that this can be found again.',
        },
      ),
      others: [next, ...others.filter(({ kind }) => kind !== 'leave')],
    };
  return { next: accepted === null ? next : { ...next, text: `${next.text} ${accepted}` }, others };
}
