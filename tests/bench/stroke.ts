import { Solver } from 'odex';
import { runStroke, strokeChanges, strokeOfSetup, type LimbBow } from '../../core/bow/index.ts';
import { bracedOf } from '../../core/bow/limbs/braced.ts';
import { hingeOf } from '../../core/bow/limbs/hinge.ts';
import { looseOf } from '../../core/bow/limbs/runStroke.ts';
import { exampleBundle } from '../../core/model/index.ts';
import { randomBows } from '../published/strokeByOdex.ts';
import { row, timed, type Row } from './row.ts';
import { medians } from './timing.ts';

const BOWS = randomBows(16, 20260801).filter((bow) => runStroke(bow).ok);

/** A bow with its statics done, which both contestants begin from: what is raced is the integration with its exit. */
const READY = BOWS.map((bow) => {
  const braced = bracedOf(bow);
  const hinge = braced.ok ? hingeOf(bow, braced.value) : braced;
  if (!braced.ok || !hinge.ok) throw new RangeError('This bow cannot be drawn.');
  return { bow, braced: braced.value, hinge: hinge.value };
});
type Ready = (typeof READY)[number];

interface Left {
  readonly time: number;
  readonly speed: number;
}

function byBench({ bow, braced, hinge }: Ready, tolerance?: number): Left {
  const run = looseOf(bow, braced, hinge, tolerance);
  return run.ok ? run.value.exit : { time: NaN, speed: NaN };
}

/** The same equations written plainly for the library: u, θ and their rates. */
function ratesOf({ bow, braced, hinge }: Ready): (time: number, y: number[]) => number[] {
  const { arrowMass, hingeX, hingeY, limb, tipMass, stringMass, stringDamping, hingeDamping, fingers } = bow;
  const { slack, spring } = braced;
  const q = stringMass / 6;
  const [alongMass, swing] = [arrowMass + 2 * q, 2 * (tipMass + q) * limb * limb];
  const held = hinge.atDraw.force;
  return (time, [u = 0, theta = 0, along = 0, turning = 0]) => {
    const [sin, cos] = [Math.sin(theta), Math.cos(theta)];
    const [x, y] = [u - hingeX - limb * sin, hingeY + limb * cos];
    const length = Math.sqrt(x * x + y * y);
    const [share, lever] = [x / length, (limb * (x * cos + y * sin)) / length];
    const stretch = length - slack;
    const tension = stretch > 0 ? Math.max(0, spring * stretch + stringDamping * (share * along - lever * turning)) : 0;
    const pull = time < fingers ? held * (1 - time / fingers) : 0;
    const coupling = q * limb * cos;
    const onNock = q * limb * sin * turning * turning - 2 * tension * share + pull;
    const onArms = 2 * (tension * lever - hinge.moment(theta) - hingeDamping * turning);
    const determinant = alongMass * swing - coupling * coupling;
    return [
      along,
      turning,
      (swing * onNock - coupling * onArms) / determinant,
      (alongMass * onArms - coupling * onNock) / determinant,
    ];
  };
}

/** The library has no event: it is stepped past the exit in a few strides, and the crossing is closed in on by false position. */
function byLibrary(ready: Ready, tolerance: number): Left {
  const { bow, hinge } = ready;
  const rates = ratesOf(ready);
  const solver = new Solver(4);
  solver.absoluteTolerance = tolerance;
  solver.relativeTolerance = tolerance;
  solver.initialStepSize = 2e-4;
  const thrust = (time: number, y: number[]) => -(rates(time, y)[2] ?? NaN);
  let time = bow.fingers;
  let state = solver.solve(rates, 0, [bow.draw, hinge.atDraw.theta, 0, 0], time).y;
  const stride = 4e-3;
  for (let tries = 0; tries < 100; tries++) {
    const next = solver.solve(rates, time, state, time + stride).y;
    if (thrust(time + stride, next) <= 0) {
      let [a, b, fa, fb] = [0, stride, thrust(time, state), thrust(time + stride, next)];
      for (let round = 0; round < 40; round++) {
        const at = (a * fb - b * fa) / (fb - fa);
        const y = solver.solve(rates, time, state, time + at).y;
        const f = thrust(time + at, y);
        if (Math.abs(f) < 1e-6 || Math.abs(b - a) < 1e-13) return { time: time + at, speed: -(y[2] ?? NaN) };
        if (f * fb < 0) [a, fa] = [b, fb];
        else fa /= 2;
        [b, fb] = [at, f];
      }
    }
    time += stride;
    state = next;
  }
  return { time: NaN, speed: NaN };
}

/** The tight reference is the bench's own at a tolerance ten thousand times tighter; tests hold it to the library at its tightest. */
const references = READY.map((ready) => byBench(ready, 1e-12));

/** Farthest of all bows from the tight reference, as a share of the speed. */
const worstOf = (run: (ready: Ready) => Left): number =>
  Math.max(...READY.map((ready, i) => Math.abs(run(ready).speed / (references[i]?.speed ?? NaN) - 1)));

/** The loosest of the library's tolerances, in steps of half a decade, that keeps every bow within this share of its speed. */
function toleranceWithin(share: number): number {
  for (let power = 1; power <= 14; power += 0.5)
    if (worstOf((ready) => byLibrary(ready, 10 ** -power)) <= share) return 10 ** -power;
  throw new RangeError(`The library never comes within ${share}.`);
}

const over =
  <T>(things: readonly T[], run: (thing: T) => number) =>
  (times: number) => {
    let sum = 0;
    for (let i = 0; i < times; i++) sum += run(things[i % things.length] as T);
    return sum;
  };

export function strokeRows(): Row[] {
  const ours = worstOf((ready) => byBench(ready));
  const tolerance = toleranceWithin(ours);
  const { run, loose, library, setup, changes } = medians({
    run: over(BOWS, (bow: LimbBow) => {
      const found = runStroke(bow);
      return found.ok ? found.value.exit.speed : 0;
    }),
    loose: over(READY, (ready) => byBench(ready).speed),
    library: over(READY, (ready) => byLibrary(ready, tolerance).speed),
    setup: over([exampleBundle], (bundle) => (strokeOfSetup(bundle).ok ? 1 : 0)),
    changes: over([exampleBundle], (bundle) => (strokeChanges(bundle).ok ? 1 : 0)),
  });
  return [
    timed('stroke.run', run),
    timed('stroke.loose.same-error', loose, library),
    row(
      'stroke.loose.same-error.error',
      ours,
      '-',
      worstOf((ready) => byLibrary(ready, tolerance)),
    ),
    timed('stroke.of-setup', setup, run),
    timed('stroke.changes', changes, run),
  ];
}
