import { launchElevation } from '../../flight/index.ts';
import { ok, type Problem, refuse, type Result } from '../../model/problem.ts';
import { together } from '../../model/sentence.ts';
import { checkMarks } from './checkMarks.ts';
import { widerBy } from './expectedFrom.ts';
import { judgeMarks } from './judgeMarks.ts';
import { readingOf } from './markModel.ts';
import { markNotes } from './markNotes.ts';
import { solveMarks, type SolvedMarks } from './solveMarks.ts';
import type { FittedMarks, KnownMark, MarkPriors, SightScale } from './types.ts';
import { farWords } from './words.ts';

/** Beyond this no widening makes an honest interval of marks that nobody can be blamed for. */
const hopeless = 10;

function noFlight(marks: readonly KnownMark[], { speed, k, eyeHeight }: MarkPriors): Problem {
  const farthest = Math.max(...marks.map(({ distance }) => distance));
  const carried = launchElevation({ speed: speed.high, k: k.low, eyeHeight: eyeHeight.value, x: farthest, y: 0 });
  if (!carried.ok) return { ...carried.problem, code: 'out-of-reach' };
  return {
    code: 'no-flight',
    sentence: `No flight was found that passes near these marks: readings that this bow can have at up to ${farWords(farthest)} were expected.`,
    field: 'marks',
  };
}

function figuresOf({ parameters, covariance }: SolvedMarks, wider: number, scale: SightScale): FittedMarks['figures'] {
  const sd = (j: number) => wider * Math.sqrt(Math.max(0, covariance[j]?.[j] ?? 0));
  const [logSpeed, eyeHeight, logK, sightRadius, zero] = parameters;
  const [speed, k] = [Math.exp(logSpeed), Math.exp(logK)];
  return {
    speed: { value: speed, sd: speed * sd(0) },
    eyeHeight: { value: eyeHeight, sd: sd(1) },
    k: { value: k, sd: k * sd(2) },
    sightRadius: { value: sightRadius, sd: sd(3) },
    zero: { value: readingOf(zero, scale), sd: sd(4) / scale.unit },
  };
}

/**
 * Fit speed, eye height, drag, sight radius and zero to known sight marks, and hold each mark against the others.
 *
 * @equation as `solveMarks`; intervals widened by S = √(χ²/(n − 1)) where that is above 1; verdicts as `judgeMarks`
 * @param marks - one to sixty known marks, in any order [list]
 * @param scale - the sight's scale [record]
 * @param priors - what bow and arrow let be held of the figures beforehand [record]
 * @returns the fit as plain data, with what a person must know of it in `notes`; or a refusal that says what was expected [record]
 * @validity level ground, still air, one archer, bow, arrow and form; with one mark the figures held beforehand lead; a mark that does not fit is counted until somebody takes it out with `leftOut`
 * @source marquardt-1963; birge-1932; own derivation
 * @example fitMarks(exampleMarks, exampleScale, examplePriors).value.figures.zero.value > 5 // true
 */
export function fitMarks(marks: readonly KnownMark[], scale: SightScale, priors: MarkPriors): Result<FittedMarks> {
  const checked = checkMarks(marks, scale, priors);
  if (!checked.ok) return checked;
  const counted = marks.filter(({ leftOut = false }) => !leftOut);
  const solved = solveMarks(counted, scale, priors);
  if (solved === null) return { ok: false, problem: noFlight(counted, priors) };
  const wider = widerBy(solved.sum, counted.length);
  const judged = judgeMarks(marks, scale, priors);
  if (wider > hopeless && !judged.some(({ verdict, leftOut = false }) => verdict === 'does not fit' && !leftOut))
    return refuse(
      'contradictory',
      `The marks for ${together(counted.map(({ distance }) => farWords(distance)))} fit no flight of this bow: they miss ${wider.toFixed(0)} times as far as arrows scatter. Check the unit of the scale, which way its numbers grow, and each reading.`,
      'marks',
    );
  const { parameters, covariance } = solved;
  const told = { marks: counted, scale, priors, parameters, figures: figuresOf(solved, wider, scale), wider, judged };
  return ok({ ...told, covariance, notes: markNotes(told) });
}
