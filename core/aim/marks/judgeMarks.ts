import { tTwoSided } from '../../group/index.ts';
import { placeOf, usualShots } from './markModel.ts';
import { expectedPlace, type ExpectedPlace, readingBand, widerBy } from './expectedFrom.ts';
import { solveMarks } from './solveMarks.ts';
import type { JudgedMark, KnownMark, MarkPriors, SightScale } from './types.ts';

/** The chance of accusing any good mark. */
const alpha = 0.05;

/** Twice the logarithm of odds of 20 to 1: a mark is blamed only when no other explains the marks nearly as well by being left out. */
const surely = 2 * Math.log(20);

/** Above this many degrees of freedom Student's law is the normal one. */
const normal = 1e6;

interface LeftOut {
  readonly expected: ExpectedPlace | null;
  readonly p: number;
  /** Squared misses of the rest. */
  readonly rest: number;
}

function leaveOut(mark: KnownMark, others: readonly KnownMark[], scale: SightScale, priors: MarkPriors): LeftOut {
  const solved = others.length > 0 ? solveMarks(others, scale, priors) : null;
  if (solved === null) return { expected: null, p: 1, rest: Infinity };
  const wider = widerBy(solved.sum, others.length);
  const expected = expectedPlace(solved, wider, priors, mark.distance, mark.shots ?? usualShots);
  if (expected === null) return { expected, p: 1, rest: solved.sum };
  const t = (placeOf(mark.reading, scale) - expected.place) / expected.sd;
  return { expected, p: tTwoSided(t, normal), rest: solved.sum };
}

/**
 * Hold each mark against what the others let it be expected.
 *
 * @equation z = (q − q̂)/SD from the fit without the mark; the worst of n is out when p < 0.05/n and no other left out explains the rest within odds of 20 to 1, stand that one out or not; then the same without it, while three are left
 * @param marks - checked [list]
 * @param scale - the sight's scale [record]
 * @param priors - what is held beforehand [record]
 * @returns each mark in its order, with expected reading, verdict and p [list]
 * @validity of two marks that contradict each other neither can be blamed: both are `one of these`; a mark that was taken out is held against those that count
 * @source own derivation
 * @example judgeMarks(exampleMarks, exampleScale, examplePriors).map(({ verdict }) => verdict) // ["fits", "fits", "fits", "fits"]
 */
export function judgeMarks(marks: readonly KnownMark[], scale: SightScale, priors: MarkPriors): readonly JudgedMark[] {
  const without = (mark: KnownMark, among: readonly KnownMark[]) =>
    leaveOut(
      mark,
      among.filter((other) => other !== mark),
      scale,
      priors,
    );
  const counted = marks.filter(({ leftOut = false }) => !leftOut);
  const out = new Set<KnownMark>();
  let unclear = new Set<KnownMark>();
  let held: ReadonlyMap<KnownMark, LeftOut> = new Map();
  for (;;) {
    const left = counted.filter((mark) => !out.has(mark));
    held = new Map(left.map((mark) => [mark, without(mark, left)]));
    const suspects = suspectsAmong(held);
    const [worst, ...more] = suspects;
    if (worst === undefined) break;
    if (more.length > 0 || left.length < 3) {
      // What the rest does not bear out is no ground to blame anybody before either.
      unclear = new Set([...out, ...suspects]);
      out.clear();
      break;
    }
    out.add(worst);
  }
  const left = counted.filter((mark) => !out.has(mark));
  return marks.map((mark): JudgedMark => {
    const { expected, p } = (out.size > 0 || unclear.size === 0 ? held.get(mark) : undefined) ?? without(mark, left);
    const told = { ...mark, expected: expected === null ? null : readingBand(expected, scale), p };
    if (out.has(mark) || (mark.leftOut === true && p < alpha / (left.length + 1))) return { ...told, verdict: 'does not fit' };
    if (unclear.has(mark)) return { ...told, verdict: 'one of these' };
    return { ...told, verdict: expected === null ? 'alone' : 'fits' };
  });
}

/** Where one stands out: every mark that, left out, would put the rest as right as any other would, whether it stands out itself or not. */
function suspectsAmong(held: ReadonlyMap<KnownMark, LeftOut>): KnownMark[] {
  const all = [...held];
  const least = Math.min(...all.map(([, { rest }]) => rest));
  const explain = all.filter(([, { rest }]) => rest <= least + surely);
  return explain.some(([, { p }]) => p < alpha / all.length) ? explain.map(([mark]) => mark) : [];
}
