import { groupMeasures, type Point } from '../../group/index.ts';
import { textQuantity } from '../../units/index.ts';
import { causesOf } from '../causes.ts';
import { nextChange, type NextChange } from '../nextChange.ts';
import type { Cause, NextStep } from '../reading.ts';
import { shiftWords, voidWords } from '../sentences.ts';
import { shiftWhy } from '../shiftWhy.ts';
import { howMany, stepOf } from '../step.ts';
import { countText } from '../words.ts';
import { bareEvidence, barePlaces, type BareEvidence } from './bareEvidence.ts';
import { countFigures, wayFigure } from './figures.ts';
import { contextCauses, findingCauses } from './findingCauses.ts';
import { gated, outcome, voided } from './outcome.ts';
import type { TrialFigure, TrialInput, TrialReading } from './types.ts';

const FEWEST = { fletched: 6, bare: 4 } as const;

/**
 * What bare shafts beside fletched ones say, over all the distances they were shot at.
 *
 * @equation bareEvidence; then the next change by the order of the trade (nextChange); no reading when a group is no group, the form changed, or two distances show opposite sides
 * @param input - the trial with its records [record]
 * @returns the reading [record]
 * @validity finger release; two or more arrows of each kind at a distance; the size of a change's effect is not foretold
 * @source common practice
 * @example readBare(exampleTrialInput).headline // "Bare shafts land 43 mm right of fletched, and that is real"
 */
export function readBare(input: TrialInput): TrialReading {
  const { bundle, units } = input;
  const evidence = bareEvidence(input);
  if (evidence === null) return tooFew(input);
  const { shift, problem, noGroup, opposed, axes, points, far, weakens } = evidence;
  const change = changeFor(input, evidence);
  const shown = {
    figures: figuresOf(input, evidence),
    plot: { kind: 'shifts', points } as const,
    others: change.others,
    ...(shift === null ? {} : { why: shiftWhy(shift, units) }),
  };
  const beside = [...findingCauses(input, 'scatter'), ...contextCauses(weakens)];
  const more = moreAfter(far);
  if (problem !== null) {
    const { headline, subline } = voidWords(problem, shift, units);
    return voided(input, headline, subline, change.next, shown);
  }
  if (noGroup !== null)
    return voided(input, noGroup.headline, noGroup.subline, change.next, {
      ...shown,
      more,
      causes: [...causesOf(bundle, { ...axes, erratic: true }, units), ...beside],
    });
  if (opposed !== null) {
    const why = 'Near they lean one way and far the other: wind, form or a touch of the bow, and no setting is read from it.';
    const next = stepOf('again', `Shoot ${howMany(far.fletched, far.bare)} again`, why, {
      then: `In still air, in turn, at ${textQuantity(far.distance, 'distance', units)}.`,
    });
    return voided(input, 'No reading: the distances disagree', opposed, change.next.kind === 'stop' ? change.next : next, {
      ...shown,
      more,
      causes: beside,
    });
  }
  return read(input, evidence, change, shown);
}

/** What was shot says nothing, so that a verdict takes as many again. */
function moreAfter({ fletched, bare }: BareEvidence['far']): NonNullable<TrialReading['more']> {
  const least = { fletched: Math.max(FEWEST.fletched, fletched.shots.length), bare: Math.max(FEWEST.bare, bare.shots.length) };
  return { arrows: least.fletched + least.bare, text: `Once that is mended, ${howMany(fletched, bare)} again.` };
}

function changeFor({ bundle, units }: TrialInput, { far, problem, shift, axes, noGroup }: BareEvidence): NextChange {
  const measured = groupMeasures(far.fletched.shots);
  return nextChange({
    bundle,
    fletched: far.fletched,
    bare: far.bare,
    units,
    problem,
    shift,
    ...axes,
    erratic: noGroup !== null,
    fletchedRadius: measured.ok ? measured.value.meanRadius : null,
    fletchedFarthest: measured.ok ? farthest(far.fletched.shots, measured.value.centre) : null,
  });
}

const farthest = (shots: readonly Point[], centre: Point): number =>
  shots.reduce((most, { x, y }) => Math.max(most, Math.hypot(x - centre.x, y - centre.y)), 0);

function read(
  input: TrialInput,
  { shift, axes, distances, far, weakens }: BareEvidence,
  { next }: NextChange,
  shown: Partial<TrialReading>,
): TrialReading {
  const { bundle, units } = input;
  if (shift === null) return tooFew(input);
  const { headline, subline } = shiftWords(shift, bundle.archer.hand, axes, units);
  const at = textQuantity(far.distance, 'distance', units);
  const over =
    distances > 1 ? ` ${distances === 2 ? 'Both' : `All ${distances}`} distances together; the shift is given for ${at}.` : '';
  const alone = weakens.length > 0 ? ' Not everything was the same: see the causes.' : '';
  const told = axes.lateral !== null || axes.vertical !== null;
  const missing = shift.more ?? (shift.verdict === 'real' && !told ? Math.max(...shift.n) : null);
  return outcome(input, {
    headline,
    subline: `${subline}${over}${alone}`,
    verdict: told ? 'read' : shift.verdict === 'no sign' ? 'nothing shown' : 'too few',
    next,
    causes: causesFor(input, axes, weakens),
    more:
      missing === null
        ? null
        : { arrows: 2 * missing, text: `About ${countText(missing)} more of each, bare and fletched in turn.` },
    ifNot: ifNot(next),
    waste: told
      ? 'More arrows at this setting, since the shift is shown; and a second change before the first has been shot.'
      : 'Turning a button or a nocking point for a shift that is not shown.',
    ...shown,
  });
}

function ifNot({ kind }: NextStep): string {
  if (kind === 'change')
    return 'If the same ends again do not show it, put it back, write down that it was tried, and go to the next on the list.';
  if (kind === 'shoot' || kind === 'again')
    return 'If as many again still do not tell, the shift is too small to chase: leave it, and work on the groups.';
  return 'If it does not hold next time, shoot the same ends again before anything is turned.';
}

function causesFor(input: TrialInput, axes: BareEvidence['axes'], weakens: readonly string[]): readonly Cause[] {
  const found = [
    ...causesOf(input.bundle, { ...axes, erratic: false }, input.units),
    ...(axes.vertical === null ? [] : findingCauses(input, 'height')),
    ...(axes.lateral === null ? [] : findingCauses(input, 'side')),
    ...contextCauses(weakens),
  ];
  return found.filter(({ cause }, i) => found.findIndex((other) => other.cause === cause) === i);
}

const sides = (at: string, all = '') => [`To the right${all} at ${at}`, `To the left${all} at ${at}`] as const;
const heights = (at: string, all = '') => [`Upwards${all} at ${at}`, `Downwards${all} at ${at}`] as const;

function figuresOf(input: TrialInput, { shift, points, far, distances }: BareEvidence): readonly TrialFigure[] {
  const { units } = input;
  const at = (distance: number) => textQuantity(distance, 'distance', units);
  const rows = points.flatMap(({ distance, dx, dy, halfX, halfY }) => [
    wayFigure(sides(at(distance)), dx, halfX, units),
    wayFigure(heights(at(distance)), dy, halfY, units),
  ]);
  const both =
    shift === null || distances < 2
      ? []
      : [
          wayFigure(sides(at(far.distance), ', all together,'), shift.dx, shift.half.x, units),
          wayFigure(heights(at(far.distance), ', all together,'), shift.dy, shift.half.y, units),
        ];
  const [fletched, bare] = points.reduce(([a, b], { arrows }) => [a + arrows[0], b + arrows[1]], [0, 0]);
  return [...both, ...rows, ...countFigures(input, `${fletched} fletched and ${bare} bare`)];
}

function tooFew(input: TrialInput): TrialReading {
  const { trial, units } = input;
  const at = barePlaces(input).at(-1);
  const missing = {
    fletched: Math.max(0, FEWEST.fletched - (at?.fletched.shots.length ?? 0)),
    bare: Math.max(0, FEWEST.bare - (at?.bare.shots.length ?? 0)),
  };
  const where = textQuantity(at?.distance ?? trial.plan.distances[0] ?? 10, 'distance', units);
  const wanted = 'At least two fletched and two bare shafts at one distance were expected, better six and four.';
  const shoot = (['fletched', 'bare'] as const)
    .filter((kind) => missing[kind] > 0)
    .map((kind) => `${missing[kind]} ${kind}`)
    .join(' and ');
  const next = stepOf('shoot', `Shoot ${shoot} at ${where}`, wanted, { then: 'In turn, at one mark.' });
  return outcome(input, {
    headline: 'No reading yet: too few arrows',
    subline: wanted,
    verdict: 'too few',
    ...gated(input, next, [], ''),
    more: { arrows: missing.fletched + missing.bare, text: `${shoot} more at ${where}, in turn.` },
    ifNot: 'If bare shafts will not stay on the butt, stop: test the clearance, and have a coach look at the release.',
    waste: 'Turning anything before both kinds have been shot.',
  });
}
