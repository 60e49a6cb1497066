import { bendingModes, buildArrow, spineOf } from '../../core/arrow/index.ts';
import {
  drawWeight,
  forceDrawOf,
  speedByMass,
  stringFigures,
  strokeChanges,
  strokeOfSetup,
  virtualMassOf,
} from '../../core/bow/index.ts';
import { bestMatched, setStatistics, spreadAtTarget } from '../../core/dozen/index.ts';
import { allFindings } from '../../core/findings/index.ts';
import { defaultPreferences, type ArrowSet, type Bundle, type Setup, type Stamp } from '../../core/model/index.ts';
import { suitability, whatWouldCentre } from '../../core/suitability/index.ts';
import { demoRecords, plantedTruths } from '../../fixtures/demo/index.ts';
import { row, timed, type Row } from './row.ts';
import { medians } from './timing.ts';

const now: Stamp = { at: '2026-06-20T17:45:00.000Z', offsetMinutes: 60 };
const { units } = defaultPreferences;

/** The demo's fullest set-up: readings off the scale and back, arrows over the chronograph, a numbered dozen. */
function fullest(): Bundle {
  const records = new Map(demoRecords(now).map((record) => [record.id, record]));
  const setup = records.get(plantedTruths.set.setupId) as Setup;
  const [archer, bow, arrowSet] = [records.get(setup.archerId), records.get(setup.bowId), records.get(setup.arrowSetId)];
  if (archer?.kind !== 'archer' || bow?.kind !== 'bow' || arrowSet?.kind !== 'arrowSet')
    throw new RangeError('The demo has no such set-up.');
  return { archer, bow, arrowSet, setup };
}

/** Points that a curve is drawn through. */
const POINTS = 60;

/** What Bow shows but the stroke: the weight, the curve, the speeds over arrow masses, the string. */
function bowScreen(bundle: Bundle): number {
  let sum = 0;
  const weight = drawWeight(bundle.bow, bundle.archer, bundle.setup.settings);
  if (weight.ok) sum += weight.value.value;
  const drawn = forceDrawOf(bundle, units);
  if (drawn.ok) {
    const { brace, full, force } = drawn.value;
    for (let i = 0; i <= POINTS; i++) sum += force(brace + ((full - brace) * i) / POINTS).value;
  }
  if (virtualMassOf(bundle, units).ok) sum++;
  const speeds = speedByMass(bundle);
  if (speeds.ok)
    for (let i = 0; i <= POINTS; i++) {
      const speed = speeds.value(0.018 + 0.0004 * i);
      if (speed.ok) sum += speed.value.value;
    }
  return stringFigures(bundle).ok ? sum : -sum;
}

/** What Arrow shows: the build, its bends, what this bow wants and what would centre it, the dozen. */
function arrowScreen(bundle: Bundle): number {
  const { arrowSet, setup } = bundle;
  let sum = 0;
  if (buildArrow(arrowSet, units).ok && spineOf(arrowSet).ok) sum++;
  const modes = bendingModes(arrowSet);
  if (modes.ok) sum += modes.value.length;
  if (suitability({ ...bundle, settings: setup.settings }).ok) sum++;
  const moves = whatWouldCentre(bundle, units);
  if (moves.ok) sum += moves.value.length;
  if (setStatistics(arrowSet, units).ok && bestMatched(arrowSet, 6).ok && spreadAtTarget(bundle, 30).ok) sum++;
  return sum;
}

/** One edit of a figure that everything rests on, never the same twice. */
function edited(bundle: Bundle, i: number): Bundle {
  const by = 1e-6 * (i % 1000);
  const { arrowSet, setup } = bundle;
  const settings = { ...setup.settings, braceHeight: 0.217 + by };
  const arrows: ArrowSet = { ...arrowSet, length: (arrowSet.length ?? 0) + by };
  return { ...bundle, arrowSet: arrows, setup: { ...setup, settings } };
}

const MILLISECONDS = 1000;

export function screenRows(): Row[] {
  const bundle = fullest();
  const over = (work: (bundle: Bundle) => number) => (times: number) => {
    let last = 0;
    for (let i = 0; i < times; i++) last += work(edited(bundle, i));
    return last;
  };
  const findings = (each: Bundle) => allFindings(each, { units, now }).length;
  const { both, bow, arrow, checks, stroke, changes } = medians({
    both: over((each) => bowScreen(each) + arrowScreen(each) + findings(each)),
    bow: over(bowScreen),
    arrow: over(arrowScreen),
    checks: over(findings),
    stroke: over((each) => (strokeOfSetup(each, units).ok ? 1 : 0)),
    changes: over((each) => (strokeChanges(each).ok ? 1 : 0)),
  });
  return [
    // Asked for: 5 ms or less, without the stroke.
    row('screens.both.recompute', both * MILLISECONDS, 'ms'),
    timed('screens.bow.recompute', bow),
    timed('screens.arrow.recompute', arrow),
    timed('screens.findings', checks),
    timed('stroke.of-setup', stroke),
    timed('stroke.changes', changes),
  ];
}
