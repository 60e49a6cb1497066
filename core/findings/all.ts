import type { Band } from '../model/band.ts';
import type { Bundle } from '../model/bundle.ts';
import type { Stamp } from '../model/common.ts';
import type { UnitChoice } from '../model/preferences.ts';
import { arrowMassFinding } from './arrowMass.ts';
import { braceHeightFinding } from './braceHeight.ts';
import { centreShotFinding } from './centreShot.ts';
import { compoundFinding } from './compound.ts';
import type { Finding, Level, Screen } from './finding.ts';
import { handFinding } from './hand.ts';
import { lookOverFinding } from './lookOver.ts';
import { nockingPointFinding } from './nockingPoint.ts';
import { compoundPassFinding, compoundShaftFinding } from './onCompound.ts';
import { overshootFinding } from './overshoot.ts';
import { pointAheadFinding } from './pointAhead.ts';
import { rangeCautionFinding } from './rangeCaution.ts';
import { suitabilityFinding } from './suitability.ts';
import { tillerFinding } from './tiller.ts';
import { waitingFor } from './waiting.ts';
import { weightKnownFinding } from './weightKnown.ts';

export interface FindingOptions {
  readonly units: UnitChoice;
  /** The present instant: core has no clock. */
  readonly now: Stamp;
  /** Where the list is shown: groups add the caution for bare shafts, aim the reach. */
  readonly screen?: Screen;
  /** For aim: the greatest distance at any angle [m], null while it is not known. */
  readonly reach?: Band | null;
  /** For aim: the farthest target [m]. */
  readonly farthest?: number;
}

const order: readonly Level[] = ['stop', 'caution', 'unknown', 'waiting', 'ok'];

/** Nothing to enter: it comes back by itself. */
const heldBack: Finding = {
  ...waitingFor(
    'suitability',
    'Whether the shaft suits: held back',
    'Waits until the stop is answered.',
    'spine',
    'arrow',
    'arrowSet.length',
  ),
  action: null,
};

/** In the narrow strip a stop says so in letters, not by its mark alone. */
const inShort = (finding: Finding): Finding =>
  finding.level === 'stop' ? { ...finding, short: { ...finding.short, word: 'STOP' } } : finding;

/**
 * All checks of a set-up, worst first: the same list everywhere.
 *
 * @equation stops, cautions, unknown, waiting, in range; within a level in the order of the trade
 * @param bundle - the set-up with its records [record]
 * @param options - units, the present instant, and what the screen adds [record]
 * @returns the findings [list]
 * @validity any set-up that the records accept
 * @source common practice
 * @example allFindings(exampleBundle, { units: defaultPreferences.units, now: exampleNow })[0].level // "ok"
 */
export function allFindings(bundle: Bundle, options: FindingOptions): readonly Finding[] {
  const { units, now, screen } = options;
  const stopped = stopsOf(bundle, units).length > 0;
  const found = [
    pointAheadFinding(bundle, units),
    arrowMassFinding(bundle, units),
    handFinding(bundle),
    compoundShaftFinding(bundle),
    compoundPassFinding(bundle),
    screen === 'groups' ? rangeCautionFinding(units) : null,
    screen === 'aim' ? overshootFinding(options.reach ?? null, options.farthest ?? 0, units) : null,
    braceHeightFinding(bundle, units),
    tillerFinding(bundle, units),
    nockingPointFinding(bundle, units),
    centreShotFinding(bundle, units),
    stopped ? heldBack : suitabilityFinding(bundle, units),
    weightKnownFinding(bundle, units),
    compoundFinding(bundle),
    lookOverFinding(bundle, 'bow', now),
    lookOverFinding(bundle, 'arrowSet', now),
  ].filter((finding) => finding !== null);
  return found.map(inShort).sort((a, b) => order.indexOf(a.level) - order.indexOf(b.level));
}

/**
 * The findings that can hurt someone: no change is advised and no verdict shown while one of them is a stop.
 *
 * @equation arrow too short, arrow too light, wrong hand, wooden arrows on a compound
 * @param bundle - the set-up with its records [record]
 * @param units - the person's choice of units [record]
 * @returns those that stop [list]
 * @validity a brace height outside the maker's range stops the shooting too (see shootingStops), but mending it is the next change itself
 * @source common practice
 * @example stopsOf(exampleBundle, defaultPreferences.units) // []
 */
export function stopsOf(bundle: Bundle, units: UnitChoice): readonly Finding[] {
  return [
    pointAheadFinding(bundle, units),
    arrowMassFinding(bundle, units),
    handFinding(bundle),
    compoundShaftFinding(bundle),
  ].filter((finding) => finding !== null && finding.level === 'stop') as readonly Finding[];
}

/**
 * Every finding for which nothing may be shot with this set-up.
 *
 * @equation those of stopsOf, and a brace height outside the maker's range
 * @param bundle - the set-up with its records [record]
 * @param units - the person's choice of units [record]
 * @returns those that stop [list]
 * @validity any set-up that the records accept
 * @source common practice
 * @example shootingStops(exampleBundle, defaultPreferences.units) // []
 */
export function shootingStops(bundle: Bundle, units: UnitChoice): readonly Finding[] {
  const brace = braceHeightFinding(bundle, units);
  return [...stopsOf(bundle, units), ...(brace?.level === 'stop' ? [brace] : [])];
}

/**
 * Whether results that rest on the set-up (whether the shaft suits, the next change) must not be shown.
 *
 * @equation true when any finding but the brace height is a stop: mending the brace height is the next change itself
 * @param findings - the findings of a set-up [list]
 * @returns true when a stop stands [choice]
 * @validity the list of allFindings
 * @source common practice
 * @example dependentsStopped([]) // false
 */
export function dependentsStopped(findings: readonly Finding[]): boolean {
  return findings.some(({ id, level }) => level === 'stop' && id !== 'braceHeight');
}
