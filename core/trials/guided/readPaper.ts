import type { Tear } from '../../model/trial.ts';
import { textQuantity } from '../../units/index.ts';
import { nockingStep, type Shower } from '../nockingStep.ts';
import { outwardOf } from '../outward.ts';
import type { NextStep } from '../reading.ts';
import { clearanceStep } from '../remedies.ts';
import { stepOf } from '../step.ts';
import { USUAL_TEAR, usualTearText } from './disputed.ts';
import { wayFigure } from './figures.ts';
import { notForFingers } from './notForFingers.ts';
import { gated, outcome } from './outcome.ts';
import { tearEvidence, type TearEvidence } from './tears.ts';
import { tearWhy } from './tearWhy.ts';
import type { TrialFigure, TrialInput, TrialReading } from './types.ts';
import { tearCauses, tearHeadline, tearSubline } from './tearWords.ts';

const tearShows: Shower = {
  what: 'the tear',
  reads: 'reads',
  lowered: 'The tear should grow shorter',
  raised: 'The tear should grow shorter',
  follows: 'the tear does not grow shorter',
};

const AGAIN = 'Then tear paper again at every distance, three times each.';

/**
 * What tears in paper say: the height of the nocking point, and gross errors to the side.
 *
 * @equation nock high = nocking point high, nock low = low; a gross tear outward of the riser = weak or touching, inward = stiff; height before side
 * @param input - the trial with its records [record]
 * @returns the reading; fletched tears are read before bare ones [record]
 * @validity finger release; three or more tears of a kind
 * @source common practice; from memory
 * @example readPaper(exampleTrial('paper tear')).verdict // "too few"
 */
export function readPaper(input: TrialInput): TrialReading {
  const { trial, bundle, units } = input;
  const of = (kind: Tear['fletching']) =>
    tearEvidence(
      trial.tears.filter(({ fletching }) => fletching === kind),
      bundle.arrowSet,
    );
  const [fletched, bare] = [of('fletched'), of('bare')];
  const evidence = fletched ?? bare;
  const mean = evidence === null ? null : { across: span(evidence.across), up: span(evidence.up) };
  const plot = { kind: 'tears', tears: trial.tears, mean, usual: USUAL_TEAR } as const;
  if (evidence === null) return { ...tooFew(input), plot };
  const figures = [fletched, bare].flatMap((kind) => (kind === null ? [] : figuresOf(kind, input)));
  const shown = { plot, figures, why: tearWhy(evidence, units) };
  return notForFingers(input, shown) ?? read(input, evidence, fletched === null ? null : bare, shown);
}

const span = ({ value, low, high }: TearEvidence['up']) => ({ value, low, high });

function read(
  input: TrialInput,
  evidence: TearEvidence,
  beside: TearEvidence | null,
  shown: Partial<TrialReading>,
): TrialReading {
  const { bundle, units } = input;
  const { vertical, gross, up, across } = evidence;
  const lateral = gross === null ? null : outwardOf(across.value, bundle.archer.hand) > 0 ? 'weak' : 'stiff';
  const height = vertical === null ? null : vertical === 'nock high' ? 'nocking point high' : 'nocking point low';
  const confirm = stepOf(
    'shoot',
    'Shoot bare shafts before anything is turned to the side',
    `Paper shows gross errors to the side only: where bare shafts strike tells stiff or weak.`,
    { then: 'Begin a bare-shaft trial.' },
  );
  const nocking =
    height === null
      ? null
      : nockingStep(bundle, height, Math.abs(up.value) < 2 * (bundle.arrowSet.diameter ?? 0.006), units, AGAIN, tearShows);
  // Tears have no time of their own: once a setting was moved in this trial they are of the old one.
  const moved = input.trial.changes.some(({ patch }) => patch !== null);
  const first: NextStep = moved
    ? stepOf(
        'again',
        'Tear paper anew in a trial of its own',
        'A setting was moved since these were torn: the reading is of the old one.',
        { then: AGAIN },
      )
    : (nocking ?? (lateral === 'weak' ? clearanceStep('change', AGAIN) : lateral === 'stiff' ? confirm : leave(evidence, input)));
  const others = [...(lateral === 'weak' || height === 'nocking point low' ? [clearanceStep('change', AGAIN)] : []), confirm];
  const { next, others: rest } = gated(
    input,
    first,
    others.filter(({ title }) => title !== first.title),
    AGAIN,
  );
  const told = height !== null || lateral !== null;
  return outcome(input, {
    headline: tearHeadline(evidence, lateral, units),
    subline: tearSubline(evidence, units),
    verdict: told ? 'read' : 'nothing shown',
    next,
    others: rest,
    causes: tearCauses(input, { height, lateral }, evidence, beside),
    ifNot:
      'If the tear does not change, put it back; a tear that stays whatever is moved is a touch of the bow, so test the clearance.',
    waste: `Chasing a tear to the side of less than ${usualTearText(units)}: it can come from a tuned bow.`,
    ...shown,
  });
}

const leave = ({ changes }: TearEvidence, input: TrialInput): NextStep =>
  stepOf(
    'leave',
    'Leave it: nothing to change by paper',
    changes
      ? 'The tear is not the same at all distances, as with an arrow that is still flexing.'
      : `No height is shown, and to the side no more than the ${usualTearText(input.units)} that a tuned bow may leave.`,
    { then: 'Go on with bare shafts.' },
  );

function figuresOf(evidence: TearEvidence, { units, trial }: TrialInput): readonly TrialFigure[] {
  const { across, up, n, fletching } = evidence;
  const kind = fletching === 'bare' ? 'Bare' : 'Fletched';
  const from = [...new Set(trial.tears.filter((tear) => tear.fletching === fletching).map(({ distance }) => distance))].sort(
    (a, b) => a - b,
  );
  return [
    wayFigure([`${kind}, nock upwards`, `${kind}, nock downwards`], up.value, up.high - up.value, units),
    wayFigure([`${kind}, nock to the right`, `${kind}, nock to the left`], across.value, across.high - across.value, units),
    {
      name: `Tears, ${fletching}`,
      value: `${n} from ${from.map((z) => textQuantity(z, 'distance', units)).join(', ')}`,
      interval: '',
    },
  ];
}

function tooFew(input: TrialInput): TrialReading {
  const { trial, units } = input;
  const missing = Math.max(1, 3 - trial.tears.filter(({ fletching }) => fletching === 'fletched').length);
  const at = textQuantity(trial.plan.distances[0] ?? 2, 'distance', units);
  const wanted = 'At least three tears of one kind of arrow were expected: one tear is one arrow\u2019s.';
  const shoot = stepOf('shoot', `Shoot ${missing} more through paper`, wanted, { then: `At ${at} first, then farther back.` });
  return outcome(input, {
    headline: 'No reading yet: too few tears',
    subline: wanted,
    verdict: 'too few',
    ...gated(input, shoot, [], AGAIN),
    more: { arrows: missing, text: `${missing} more through paper, fletched.` },
    ifNot: 'If no two tears are alike, it is the release or a touch of the bow: test the clearance, and have a coach look.',
    waste: 'Moving the nocking point for one tear.',
  });
}
