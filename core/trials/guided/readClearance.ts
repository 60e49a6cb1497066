import type { ClearanceShot } from '../../model/trial.ts';
import { sources } from '../../sources.ts';
import type { Cause, NextStep } from '../reading.ts';
import { stepOf } from '../step.ts';
import { contextCauses, findingCauses } from './findingCauses.ts';
import { outcome } from './outcome.ts';
import { lastTouches, shareOf, type Touches } from './touches.ts';
import type { TrialInput, TrialReading } from './types.ts';

type Part = ClearanceShot['touched'][number];

const FEWEST = 3;
/** After so many places of the nock it is not the nock. */
const MOST_TURNS = 4;
const AGAIN = 'Powder anew, and three fletched shots with a helper loading.';
const names: Readonly<Record<Part, string>> = {
  fletching: 'the fletching',
  'nock end of the shaft': 'the nock end of the shaft',
  rest: 'the rest',
  button: 'the button',
  window: 'the window',
  'arm or clothing': 'arm or clothing',
};

/**
 * What the powder shows: whether anything is touched, what, and the one next change.
 *
 * @equation any mark but the even trace of the shaft: arm first, then the nock by 1/32 turn up to three times, then rest, fletching, nocking point, shaft; none in three or more: nothing shown, with the share of shots that may still touch
 * @param input - the trial with its records [record]
 * @returns the reading [record]
 * @validity a helper loads; three or more shots since the nock was turned
 * @source common practice; clopper-pearson-1934
 * @example readClearance(exampleTrial('clearance')).verdict // "too few"
 */
export function readClearance(input: TrialInput): TrialReading {
  const { trial } = input;
  const touches = lastTouches(trial.clearance);
  const plot = { kind: 'clearance', shots: trial.clearance } as const;
  if (touches === null || (touches.touched === 0 && touches.shots.length < FEWEST)) return { ...tooFew(input, touches), plot };
  const { touched, shots, parts } = touches;
  const share = shareOf(touched, shots.length);
  const of100 = `${Math.floor(100 * share.low)} to ${Math.ceil(100 * share.high)} of 100`;
  const clear = touched === 0;
  const { next, others } = steps(touches, input);
  return outcome(input, {
    headline: clear
      ? `Nothing is touched in ${shots.length} shots`
      : `${list(parts)} marked in ${touched} of ${shots.length} shots`,
    subline: clear
      ? `It touches in fewer than ${Math.ceil(100 * share.high)} of 100 shots, 19 times in 20.`
      : `${touches.turns > 1 ? 'Counted since the nock was last turned. ' : ''}So it touches in ${of100} shots, 19 times in 20.`,
    verdict: clear ? 'nothing shown' : 'read',
    next,
    others,
    plot,
    figures: [
      {
        name: 'Shots with a mark',
        value: `${touched} of ${shots.length}`,
        interval: of100,
      },
      { name: 'Nock positions tried', value: String(touches.turns), interval: '' },
    ],
    causes: clear ? [] : [...causesOf(touches), ...findingCauses(input, 'scatter'), ...contextCauses([])],
    ifNot: clear
      ? 'If groups are erratic all the same, it is the release: a coach sees more than powder does.'
      : 'If it is touched still, put that back and go to the next on the list.',
    waste: clear ? 'Turning anything for clearance now.' : 'Bare shafts and group work while something is touched.',
    why: {
      title: 'What the powder shows',
      text: 'Any mark but the even trace where the shaft slides along the rest is a touch. The share of shots that touch is told with its exact interval: three clean shots leave room for many that are not.',
      equation: '1 \u2212 0.05^(1/n)',
      symbols: [
        { symbol: 'n', name: 'shots', value: String(shots.length) },
        { symbol: 'k', name: 'with a mark', value: String(touched) },
      ],
      source: sources['clopper-pearson-1934'],
    },
  });
}

function list(parts: readonly Part[]): string {
  const words = parts.map((part) => names[part]);
  const text = words.length < 2 ? (words[0] ?? '') : `${words.slice(0, -1).join(', ')} and ${words.at(-1) ?? ''}`;
  return text.charAt(0).toUpperCase() + text.slice(1);
}

function steps({ parts, touched, turns }: Touches, { bundle, trial }: TrialInput): Pick<TrialReading, 'next' | 'others'> {
  if (touched === 0)
    return {
      next: stepOf('leave', 'Leave it: nothing is touched', 'The powder shows no mark but the trace of the shaft.', {
        then: 'Go on with the trial that led here.',
      }),
      others: [],
    };
  const order = [
    ...(parts.includes('arm or clothing') ? [arm] : []),
    ...(turns < MOST_TURNS && (parts.includes('fletching') || parts.includes('nock end of the shaft')) ? [nock] : []),
    ...(bundle.bow.arrowPass === 'rest and button' ? [rest] : []),
    fletching,
    point,
    spine,
    // What was tried before is not tried again; the nock is counted by its turns.
  ].filter((step) => step === nock || trial.changes.every(({ title }) => title !== step.title));
  const [next = spine, ...others] = order;
  return { next, others };
}

const change = (title: string, text: string, caution: string | null = null): NextStep =>
  stepOf('change', title, text, { then: AGAIN, caution });
const arm = change(
  'Clear arm and clothing',
  'A sleeve or the arm in the string\u2019s way moves every shot: arm guard on, sleeves tight, then look at the bow arm\u2019s elbow.',
);
const nock = change(
  'Turn the nock by a thirty-second of a turn',
  'The fletching should pass where nothing stands; which way is found by trying. All arrows are turned alike once it is found.',
);
const rest = change(
  'Shorten or turn in the arm of the rest',
  'It should end where the shaft does, seen from above, and not stand out beyond it.',
  'Look that the arrow still stays on the rest at full draw.',
);
const fletching = change('Try lower or shorter fletching', 'On three arrows first: lower fletching has more room to pass.');
const point = change(
  'Go back to the height of the nocking point',
  'A shaft that is driven down on the rest bounces off it, and its end strikes: a bare-shaft or nocking-point trial tells.',
);
const spine = change(
  'Last: look at the shaft\u2019s stiffness',
  'One that is too weak or too stiff swings its end into the bow: the load on the shaft under Arrow says which.',
);

function causesOf({ parts }: Touches): readonly Cause[] {
  const when = (found: boolean, cause: string, evidence: string): Cause[] =>
    found ? [{ cause, evidenceFor: [evidence], evidenceAgainst: [] }] : [];
  const tail = parts.includes('fletching') || parts.includes('nock end of the shaft');
  const bow = parts.filter((part) => part === 'rest' || part === 'button' || part === 'window');
  return [
    ...when(parts.includes('arm or clothing'), 'Arm or clothing in the string\u2019s way', 'There is powder on them.'),
    ...when(parts.includes('fletching'), 'The fletching passes where the rest stands', 'The fletching is marked.'),
    ...when(tail && bow.length > 0, 'The end of the shaft swings into the bow', `${list(bow)} marked as well as the arrow.`),
    ...when(
      parts.includes('rest') && !tail,
      'The shaft bounces on the rest',
      'The rest is marked, and neither fletching nor the end of the shaft.',
    ),
  ];
}

function tooFew(input: TrialInput, touches: Touches | null): TrialReading {
  const missing = FEWEST - (touches?.shots.length ?? 0);
  const wanted = 'Three shots without a mark since the nock was last turned were expected: one clean shot shows little.';
  return outcome(input, {
    headline: 'No reading yet: too few shots',
    subline: wanted,
    verdict: 'too few',
    next: stepOf('shoot', `Shoot ${missing} more with powder`, wanted, { then: AGAIN }),
    more: { arrows: missing, text: `${missing} more with powder, a helper loading.` },
    ifNot: 'If the powder shows nothing at all, not even the trace of the shaft, spray more of it.',
    waste: 'Turning anything for clearance before that.',
  });
}
