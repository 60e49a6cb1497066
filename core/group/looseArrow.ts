import { ok, refuse, type Result } from '../model/problem.ts';
import { fUpperTail } from './distributions.ts';
import { checkedNumbers, type EndShot } from './numberedShots.ts';
import { arrowModel, restShape, type ArrowModel } from './oddModel.ts';
import { endsForLooseArrow } from './oddArrowPlan.ts';
import { ONE_HOLE } from './points.ts';

export interface LooseArrow {
  readonly arrow: number;
  /** Its spread over that of the others, as seen; a little too near 1, since the ends' means take some of it up. */
  readonly ratio: number;
  readonly p: number;
}

export interface LooseArrows {
  /** Every arrow that was shot twice or more, the loosest first. */
  readonly arrows: readonly LooseArrow[];
  /** The one that is shown loose: p below 0.05 over the number of arrows. */
  readonly loose: LooseArrow | null;
  /** Ends in all that show an arrow with twice the spread of the others four times in five; null when more than a thousand. */
  readonly endsForTwice: number | null;
}

const ALPHA = 0.05;
const POWER = 0.8;

const traceOf = ({ rest }: ArrowModel): number => rest.xx + rest.yy;

/**
 * Which numbered arrow scatters more than the others.
 *
 * @equation F_i = [(W - W_i)/(ν - ν_i)]/(W_i/ν_i), W the squares left by arrow and end means with ν degrees of freedom, W_i and ν_i those without arrow i, with (ν - ν_i)/c and ν_i/c degrees of freedom; one-sided, loose when p < 0.05/k
 * @param shots - shots with the number of the arrow and of the end; arrows may be missing from ends [list]
 * @returns the arrows, or a refusal: `bad-position`, `too-few-arrows`, `too-many-arrows`, `twice`, `too-few-ends`, `one-hole` [record]
 * @validity exact for round normal shots; heavy tails, such as one fluffed loose, look like a loose arrow: shoot the set again before blaming it
 * @source own derivation
 * @example looseArrows([]).problem.code // "too-few-arrows"
 */
export function looseArrows(shots: readonly EndShot[]): Result<LooseArrows> {
  const checked = checkedNumbers(shots);
  if (!checked.ok) return checked;
  const numbered = checked.value;
  const whole = arrowModel(numbered);
  const few = 'At least three ends with the same numbered arrows were expected: shoot more, better eight.';
  if (whole === null || whole.df < 2) return refuse('too-few-ends', few, 'end');
  const arrows = whole.arrows.flatMap((arrow): LooseArrow[] => {
    const others = arrowModel(numbered.filter((shot) => shot.arrow !== arrow));
    if (others === null || others.df < 1) return [];
    const own = whole.df - others.df;
    if (own < 1) return [];
    const within = traceOf(others) / others.df;
    if (within < 2 * ONE_HOLE ** 2) return [];
    const f = Math.max(0, traceOf(whole) - traceOf(others)) / own / within;
    const c = restShape(others);
    return [{ arrow, ratio: Math.sqrt(f), p: fUpperTail(f, own / c, others.df / c) }];
  });
  if (arrows.length === 0) {
    return refuse(
      'one-hole',
      'The arrows show no spread of their own to compare: place each shot where it struck, or shoot more ends.',
      'shots',
    );
  }
  arrows.sort((a, b) => a.p - b.p);
  const worst = arrows[0];
  const k = whole.arrows.length;
  return ok({
    arrows,
    loose: worst !== undefined && worst.p < ALPHA / k ? worst : null,
    endsForTwice: endsForLooseArrow(k, 2, POWER),
  });
}
