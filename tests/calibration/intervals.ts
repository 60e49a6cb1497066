import {
  centreEllipse,
  circleHolding,
  extremeSpread,
  figureOfMerit,
  groupCircles,
  groupMeasures,
  MEAN_RADIUS_PER_SPREAD,
  nextArrowCircle,
  offAim,
  roundCircle,
  shiftOfGroups,
  spreadFromExtremeSpread,
  spreadFromFigureOfMerit,
  tighterGroup,
  type CentreEllipse,
  type Interval,
  type Point,
} from '../../core/group/index.ts';
import type { Random } from '../../fixtures/random.ts';
import { share, shares, type Bound, type Figure } from './row.ts';
import { needle, onFace, oval, round, shot, shots, student, wider, type Scatter } from './scatter.ts';

const DRAWS = 20_000;
const WANTED: Bound = [0.94, 0.975];

/** The true figures of a scatter, about its own centre [m]. */
interface Truth {
  readonly spread: number;
  readonly meanRadius: number;
  readonly r50: number;
  readonly r95: number;
}

/** log Γ of a half of a whole number, by the recursion from Γ(½) and Γ(1). */
const lnGammaHalf = (twice: number): number =>
  twice === 1 ? Math.log(Math.PI) / 2 : twice === 2 ? 0 : Math.log(twice / 2 - 1) + lnGammaHalf(twice - 2);

/** Own reckoning, none of it from the code that is judged but for the circle about an oval. */
function truthOf({ spread: [along, up], tails }: Scatter): Truth {
  if (tails !== Infinity) {
    // Student's law in the plane: r²/2 follows F(2, ν).
    const beyond = (p: number): number => Math.sqrt(tails * (p ** (-2 / tails) - 1));
    const root = Math.sqrt(tails / 2) * Math.exp(lnGammaHalf(tails - 1) - lnGammaHalf(tails));
    return {
      spread: onFace(along * Math.sqrt(tails / (tails - 2))),
      meanRadius: onFace(along * Math.sqrt(Math.PI / 2) * root),
      r50: onFace(along * beyond(0.5)),
      r95: onFace(along * beyond(0.05)),
    };
  }
  const steps = 4000;
  let length = 0;
  for (let i = 0; i < steps; i++) {
    const angle = (2 * Math.PI * (i + 0.5)) / steps;
    length += Math.hypot(along * Math.cos(angle), up * Math.sin(angle)) / steps;
  }
  const circle = (q: number): number =>
    along === up ? along * roundCircle(q) : circleHolding(q, { spread: [along, up], offset: { x: 0, y: 0 } });
  return {
    spread: onFace(Math.sqrt((along ** 2 + up ** 2) / 2)),
    meanRadius: onFace(MEAN_RADIUS_PER_SPREAD * length),
    r50: onFace(circle(0.5)),
    r95: onFace(circle(0.95)),
  };
}

const holds = ([low, high]: Interval, value: number): boolean => low <= value && value <= high;

/** Whether the centre of the face lies inside the oval. */
function inside({ centre, long, short, direction }: CentreEllipse): boolean {
  const along = centre.x * Math.cos(direction) + centre.y * Math.sin(direction);
  const up = centre.y * Math.cos(direction) - centre.x * Math.sin(direction);
  return (along / long) ** 2 + (up / short) ** 2 <= 1;
}

function coverage(prefix: string, n: number, scatter: Scatter, bound: Bound | null, draws = DRAWS): Figure {
  const truth = truthOf(scatter);
  const name = (what: string): string => `${prefix}: ${what}, ${n} shots, ${scatter.words}`;
  const few = n <= 20;
  const figures = {
    [name('circle of the centre')]: bound,
    [name('oval of the centre')]: bound,
    [name('side of the centre')]: bound,
    [name('spread')]: bound,
    [name('mean radius')]: bound,
    [name('R50')]: bound,
    [name('R95')]: bound,
    // Freed of the oval it takes the shots to have: called approximate, and too wide for round ones.
    [name('R50, oval')]: null,
    [name('R95, oval')]: null,
    [name('circle of the next arrow')]: bound,
    ...(few ? { [name('spread from the extreme spread')]: bound, [name('spread from the figure of merit')]: bound } : {}),
  };
  return shares(`${prefix} ${n} ${scatter.words}`, draws, figures, (random) => {
    const points = shots(random, n, scatter);
    const measures = groupMeasures(points);
    const circles = groupCircles(points);
    const ellipse = centreEllipse(points);
    if (!measures.ok || !circles.ok || !ellipse.ok) throw new Error('These shots have figures.');
    const { centre, centreRadius, axisHalf, spreadInterval, covariance, degreesOfFreedom } = measures.value;
    const { r50, r95, oval: ovals, meanRadius } = circles.value;
    const variance = (covariance.xx + covariance.yy) / 2;
    const next = shot(random, scatter);
    return {
      [name('circle of the centre')]: Math.hypot(centre.x, centre.y) <= centreRadius,
      [name('oval of the centre')]: inside(ellipse.value),
      [name('side of the centre')]: Math.abs(centre.x) <= axisHalf.x,
      [name('spread')]: holds(spreadInterval, truth.spread),
      [name('mean radius')]: holds(meanRadius.ofMany.interval, truth.meanRadius),
      [name('R50')]: holds(r50.interval, truth.r50),
      [name('R95')]: holds(r95.interval, truth.r95),
      [name('R50, oval')]: ovals !== null && holds(ovals.r50.interval, truth.r50),
      [name('R95, oval')]: ovals !== null && holds(ovals.r95.interval, truth.r95),
      [name('circle of the next arrow')]:
        Math.hypot(next.x - centre.x, next.y - centre.y) <= nextArrowCircle({ variance, degreesOfFreedom }, n, 0.95),
      ...(few ? olderFigures(points, n, truth, name) : {}),
    };
  });
}

function olderFigures(
  points: readonly Point[],
  n: number,
  truth: Truth,
  name: (what: string) => string,
): Record<string, boolean> {
  const es = spreadFromExtremeSpread(extremeSpread(points), n);
  const fom = spreadFromFigureOfMerit(figureOfMerit(points), n);
  return {
    [name('spread from the extreme spread')]: es !== null && holds(es.spreadInterval, truth.spread),
    [name('spread from the figure of merit')]: fom !== null && holds(fom.spreadInterval, truth.spread),
  };
}

const pairOf = (random: Random, n: number, scatter: Scatter, d: number, by: number): readonly [Point[], Point[]] => [
  shots(random, n, scatter),
  shots(random, n, wider(scatter, by), d),
];

/** Two groups: the circle of the shift and the interval of the ratio of spreads, with a true shift of two and a true ratio of a half. */
const pairCoverage = (prefix: string, n: number, scatter: Scatter, bound: Bound | null): Figure => {
  const circle = `${prefix}: circle of the shift, ${n} + ${n} shots, ${scatter.words}`;
  const ratio = `${prefix}: ratio of spreads, ${n} + ${n} shots, ${scatter.words}`;
  const byF = `${prefix}: ratio of spreads by F, ${n} + ${n} shots, ${scatter.words}`;
  return shares(circle, DRAWS / 4, { [circle]: bound, [ratio]: bound, [byF]: bound }, (random) => {
    const [a, b] = pairOf(random, n, scatter, 2, 1);
    const shift = shiftOfGroups(a, b);
    const tight = tighterGroup(...pairOf(random, n, scatter, 0, 0.5));
    if (!shift.ok || !tight.ok) throw new Error('These shots can be compared.');
    const { dx, dy, radius } = shift.value;
    const { interval, roundInterval } = tight.value;
    return {
      [circle]: Math.hypot(dx - onFace(2), dy) <= radius,
      [ratio]: interval[0] <= 0.5 && (interval[1] ?? Infinity) >= 0.5,
      [byF]: holds(roundInterval, 0.5),
    };
  });
};

const aimCoverage = (prefix: string, n: number, scatter: Scatter, errors: number, bound: Bound | null): Figure => {
  const distance = onFace((errors * truthOf(scatter).spread) / onFace(1) / Math.sqrt(n));
  const words = `${n} shots, ${errors} standard errors off, ${scatter.words}`;
  const narrow = `${prefix}: distance from the aim, ${words}`;
  const wide = `${prefix}: distance from the aim, oval, ${words}`;
  // The oval one is made to keep 95 % at least.
  return shares(narrow, DRAWS / 10, { [narrow]: bound, [wide]: null }, (random) => {
    const off = offAim(shots(random, n, scatter), { x: 0, y: -distance });
    if (!off.ok) throw new Error('These shots have a centre.');
    return { [narrow]: holds(off.value.interval, distance), [wide]: holds(off.value.ovalInterval, distance) };
  });
};

/** How often spreads that are alike are told apart: by the test that decides, and by F beside it. */
function falseTighter(n: number, scatter: Scatter): Figure {
  const deciding = `Tighter, false alarms: ${n} + ${n}, ${scatter.words}`;
  const byF = `Tighter, false alarms by F: ${n} + ${n}, ${scatter.words}`;
  return shares(deciding, DRAWS / 2, { [deciding]: null, [byF]: null }, (random) => {
    const result = tighterGroup(shots(random, n, scatter), shots(random, n, scatter));
    if (!result.ok) throw new Error('These shots can be compared.');
    const [low, high] = result.value.roundInterval;
    return { [deciding]: result.value.verdict !== 'cannot tell', [byF]: low > 1 || high < 1 };
  });
}

/** How often a centre on the aim is told from it. */
const falseOff = (n: number, scatter: Scatter): Figure =>
  share(`Off the aim, false alarms: ${n} shots, ${scatter.words}`, DRAWS / 10, null, (random) => {
    const off = offAim(shots(random, n, scatter), { x: 0, y: 0 });
    return off.ok && off.value.told;
  });

export const COVERAGE = 'Coverage';
export const COVERAGE_BESIDE = 'Coverage where shots are not round and normal';

const otherwise = [oval(2), oval(5), student(5), student(3)];

export const intervalFigures: readonly Figure[] = [
  ...[3, 4, 6, 8, 12, 18, 24].map((n) => coverage(COVERAGE, n, round, WANTED)),
  ...[3, 6, 12, 24].map((n) => pairCoverage(COVERAGE, n, round, WANTED)),
  ...[3, 6, 12, 24].flatMap((n) => [0.5, 2].map((errors) => aimCoverage(COVERAGE, n, round, errors, WANTED))),
  ...otherwise.flatMap((scatter) => [6, 12].map((n) => coverage(COVERAGE_BESIDE, n, scatter, null, DRAWS / 4))),
  ...otherwise.map((scatter) => pairCoverage(COVERAGE_BESIDE, 6, scatter, null)),
  ...otherwise.map((scatter) => aimCoverage(COVERAGE_BESIDE, 6, scatter, 2, null)),
  ...[round, ...otherwise, needle].flatMap((scatter) => [3, 6, 12, 36].map((n) => falseTighter(n, scatter))),
  ...[round, ...otherwise, needle].flatMap((scatter) => [3, 6, 12].map((n) => falseOff(n, scatter))),
];
