import type { MarksPicture } from '../aim/index.ts';
import type { Band } from '../model/band.ts';
import type { Bundle } from '../model/bundle.ts';
import type { Stamp } from '../model/common.ts';
import type { UnitChoice } from '../model/preferences.ts';
import { standingStops, type Stop } from '../safety/index.ts';
import { abilityFinding } from './ability.ts';
import { arrowFlawsFinding } from './arrowFlaws.ts';
import { arrowMassFinding } from './arrowMass.ts';
import { arrowsMatchFinding } from './arrowsMatch.ts';
import { boltsFinding } from './bolts.ts';
import { braceHeightFinding } from './braceHeight.ts';
import { centreShotFinding } from './centreShot.ts';
import { compoundFinding } from './compound.ts';
import { dryFiredFinding } from './dryFired.ts';
import type { Finding, Level, Screen } from './finding.ts';
import { forceReadingsFinding } from './forceReadings.ts';
import { frontOfCentreFinding } from './frontOfCentre.ts';
import { handFinding } from './hand.ts';
import { knownOf, type Known } from './known.ts';
import { lookOverFinding } from './lookOver.ts';
import { nockFitFinding } from './nockFit.ts';
import { nockingPointFinding } from './nockingPoint.ts';
import { compoundPassFinding, compoundShaftFinding } from './onCompound.ts';
import { overshootFinding } from './overshoot.ts';
import { partsAgainstWholeFinding } from './partsAgainstWhole.ts';
import { pointAheadFinding } from './pointAhead.ts';
import { rangeCautionFinding } from './rangeCaution.ts';
import { marksSpeedFinding, sightMarksFinding, unprovenFinding } from './sightMarks.ts';
import { speedCarriedFinding } from './speedCarried.ts';
import { speedsFinding } from './speeds.ts';
import { strandsFinding } from './strands.ts';
import { stringAgeFinding } from './stringAge.ts';
import { stringFibreFinding } from './stringFibre.ts';
import { suitabilityFinding } from './suitability.ts';
import { tillerFinding } from './tiller.ts';
import { waitingFor } from './waiting.ts';
import { weightKnownFinding } from './weightKnown.ts';

export interface FindingOptions {
  readonly units: UnitChoice;
  /** The present instant: core has no clock. */
  readonly now: Stamp;
  /** Where the list is shown: groups and trials add the caution for bare shafts, aim the reach. */
  readonly screen?: Screen;
  /** Whether bare shafts are in hand, as bareInHand has it; the caution is left off only where somebody knows that none are. */
  readonly bare?: boolean;
  /** For aim: the greatest distance at any angle [m], null while it is not known. */
  readonly reach?: Band | null;
  /** For aim: the farthest target [m]. */
  readonly farthest?: number;
  /** For aim: what the sight marks say; null for an archer who aims without a sight. */
  readonly marks?: MarksPicture | null;
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

const marksFindings = ({ marks = null, units }: FindingOptions): readonly (Finding | null)[] =>
  marks === null ? [] : [sightMarksFinding(marks, units), unprovenFinding(marks, units), marksSpeedFinding(marks, units)];

/** The checks that stand before whether the shaft suits, and those after it: within a level the list keeps this order. */
function checksOf(bundle: Bundle, options: FindingOptions, known: Known): readonly [before: Finding[], after: Finding[]] {
  const { units, now, screen } = options;
  const told = (...found: readonly (Finding | null)[]) => found.filter((finding) => finding !== null);
  return [
    told(
      lookOverFinding(bundle, 'bow', now),
      dryFiredFinding(bundle),
      arrowFlawsFinding(bundle),
      pointAheadFinding(bundle, units),
      arrowMassFinding(bundle, units, known),
      handFinding(bundle),
      compoundShaftFinding(bundle),
      stringFibreFinding(bundle),
      strandsFinding(bundle, units, known),
      boltsFinding(bundle, units),
      compoundPassFinding(bundle),
      (screen === 'groups' || screen === 'trials') && options.bare !== false ? rangeCautionFinding(units) : null,
      screen === 'aim' ? overshootFinding(options.reach ?? null, options.farthest ?? 0, units) : null,
      ...marksFindings(options),
      braceHeightFinding(bundle, units),
      abilityFinding(bundle, units, known),
      tillerFinding(bundle, units),
      nockFitFinding(bundle),
      nockingPointFinding(bundle, units),
      centreShotFinding(bundle, units),
    ),
    told(
      weightKnownFinding(bundle, units, known),
      forceReadingsFinding(bundle, units),
      speedCarriedFinding(bundle, units),
      speedsFinding(bundle, units),
      stringAgeFinding(bundle, now),
      partsAgainstWholeFinding(bundle, units, known),
      arrowsMatchFinding(bundle, units),
      frontOfCentreFinding(bundle, units, known),
      compoundFinding(bundle),
      lookOverFinding(bundle, 'arrowSet', now),
    ),
  ];
}

/**
 * All checks of a set-up, worst first: the same list everywhere.
 *
 * @equation stops, cautions, unknown, waiting, in range; within a level in the order of the trade
 * @param bundle - the set-up with its records [record]
 * @param options - units, the present instant, and what the screen adds [record]
 * @returns the findings [list]
 * @validity any set-up that the records accept
 * @source common practice
 * @example allFindings(exampleBundle, { units: defaultPreferences.units, now: exampleNow }).some(({ level }) => level === 'stop') // false
 */
export function allFindings(bundle: Bundle, options: FindingOptions): readonly Finding[] {
  const known = knownOf(bundle, options.units);
  const [before, after] = checksOf(bundle, options, known);
  const suits = dependentsStopped([...before, ...after]) ? heldBack : suitabilityFinding(bundle, options.units);
  const found = suits === null ? [...before, ...after] : [...before, suits, ...after];
  return found.map(inShort).sort((a, b) => order.indexOf(a.level) - order.indexOf(b.level));
}

type Finder = (bundle: Bundle, units: UnitChoice, known: Known) => Finding | null;

/** The finding that tells of each stop. A flaw stops however old the look-over is, so that no instant is asked for. */
const tellers: Readonly<Record<Stop, Finder>> = {
  'lookOver.bow': (bundle) => lookOverFinding(bundle, 'bow', bundle.bow.lookedOver ?? bundle.bow.born),
  dryFired: dryFiredFinding,
  arrowFlaws: arrowFlawsFinding,
  pointAhead: pointAheadFinding,
  arrowMass: arrowMassFinding,
  hand: handFinding,
  compoundShaft: compoundShaftFinding,
  stringFibre: stringFibreFinding,
  strands: strandsFinding,
  bolts: boltsFinding,
};

/**
 * The findings that can hurt someone: no change is advised and no verdict shown while one of them is a stop.
 *
 * @equation as standingStops of the safety room: a flaw, a dry fire, an arrow too short or too light, the wrong hand, wood on a compound, a string that may break, a fibre or bolts that the maker does not allow
 * @param bundle - the set-up with its records [record]
 * @param units - the person's choice of units [record]
 * @returns those that stop, in the order of the list [list]
 * @validity a brace height outside the maker's range stops the shooting too (see shootingStops), but mending it is the next change itself
 * @source common practice
 * @example stopsOf(exampleBundle, defaultPreferences.units) // []
 */
export function stopsOf(bundle: Bundle, units: UnitChoice): readonly Finding[] {
  const known = knownOf(bundle, units);
  return standingStops(bundle)
    .map((stop) => tellers[stop](bundle, units, known))
    .filter((finding) => finding !== null);
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
