import { endMasses, shaftMass } from '../arrow/index.ts';
import { heavierWeight } from '../bow/index.ts';
import type { Bundle } from '../model/bundle.ts';
import { limits } from '../model/limits.ts';
import type { UnitChoice } from '../model/preferences.ts';
import { grain, inch, poundForce } from '../units/exact.ts';
import { rangeText } from '../findings/parts.ts';
import { boltBarrier, boltCaution, massBarrier, massCheckOf, reachBarrier, stringBarrier } from './barriers.ts';
import { columnFactor } from './column.ts';
import { spineDoubt, weightDoubt, type Doubt } from './doubt.ts';
import { tradeSteps, type Move } from './move.ts';
import { movedBundle } from './moved.ts';
import { columnWeightLb, type Suitability } from './suitability.ts';

/** One thing that can be changed: the figures to which it can be changed, what each does to the load figure, and what forbids it. */
export interface Way extends Pick<Move, 'what' | 'from' | 'use'> {
  /** In whole trade steps, from the nearest on. */
  readonly steps: readonly number[];
  readonly figureAt: (to: number) => number;
  readonly barrier: (to: number) => string | null;
  /** What has to be said with it, sentence by sentence. */
  readonly afterwards: readonly (string | null)[];
  /** What stays in doubt once it is done. */
  readonly doubt: Doubt;
}

/** Whole steps from just beyond a figure to a limit, the limit itself left out unless it is a whole step. */
function wholeSteps(from: number, limit: number, step: number): number[] {
  const way = Math.sign(limit - from);
  const found: number[] = [];
  const first = way > 0 ? Math.floor(from / step + 1e-6) + 1 : Math.ceil(from / step - 1e-6) - 1;
  for (let n = first; way !== 0 && (limit - n * step) * way >= -1e-9 * step; n += way) found.push(n * step);
  return found;
}

const both = (one: Doubt, other: Doubt): Doubt => ({ low: one.low * other.low, high: one.high * other.high });

/**
 * The ways to make a shaft act stiffer or weaker, with what each whole step does to the load figure.
 *
 * @equation C′/C = (F′/F) (L′/L)² (δ′/δ) c(r)/c(r′)
 * @param bundle - the set-up with its records [record]
 * @param found - its suitability [record]
 * @param weaker - whether the shaft has to act weaker [choice]
 * @param units - the person's choice of units, for what forbids a step [record]
 * @returns point, length and weight, in that order [list]
 * @validity a set-up whose suitability was given
 * @source own derivation
 * @example waysOf(exampleBundle, suitability({ ...exampleBundle, settings: exampleBundle.setup.settings }).value, true, defaultPreferences.units).length // 3
 */
export function waysOf(bundle: Bundle, found: Suitability, weaker: boolean, units: UnitChoice): readonly Way[] {
  const { arrowSet } = bundle;
  const shaft = shaftMass(arrowSet);
  const ends = endMasses(arrowSet);
  const { length, pointMass } = arrowSet;
  if (!shaft.ok || !ends.ok || length === null || pointMass === null) return [];
  const { figure, frontShare } = found.column;
  const weight = found.weight.value;
  const { pointGr, lengthIn, weightLb, usualPointGr } = tradeSteps;
  const ofShaft = spineDoubt(found.spine);
  const ofBoth = both(weightDoubt(found.weight), ofShaft);
  const factor = columnFactor(frontShare);
  const front = ends.value.frontMass;
  const withFront = (mass: number, shaftNow: number): number => factor / columnFactor(mass / (shaftNow + mass));
  const after = (what: Move['what'], to: number): Bundle => movedBundle(bundle, { what, to });
  const judged = ({ bow, archer, setup }: Bundle) => heavierWeight(bow, archer, setup.settings);
  const heavy = judged(bundle);
  const was = massCheckOf(bundle, heavy);

  const usual = { low: usualPointGr.from * grain, high: usualPointGr.to * grain };
  const point: Way = {
    what: 'point',
    use: 'mass',
    from: pointMass,
    steps: wholeSteps(pointMass, limits.pointMass[weaker ? 'max' : 'min'], pointGr * grain),
    figureAt: (to) => figure * withFront(front - pointMass + to, shaft.value.mass),
    barrier: (to) =>
      (weaker ? to > usual.high * (1 + 1e-9) : to < usual.low * (1 - 1e-9))
        ? `Points of ${rangeText(usual.low, usual.high, 'mass', units, false)} are usual (not checked against a source).`
        : massBarrier(was, massCheckOf(after('point', to), heavy), units),
    afterwards: [],
    doubt: ofBoth,
  };
  const perLength = shaft.value.mass / length;
  const cut: Way = {
    what: 'length',
    use: 'length',
    from: length,
    steps: wholeSteps(length, limits.arrowLength[weaker ? 'max' : 'min'], lengthIn * inch),
    figureAt: (to) => figure * (to / length) ** 2 * withFront(front, perLength * to),
    barrier: (to) => {
      if (weaker) return 'A cut shaft does not grow: that means new shafts.';
      const shorter = after('length', to);
      return reachBarrier(shorter, units) ?? massBarrier(was, massCheckOf(shorter, heavy), units);
    },
    afterwards: ['A cut cannot be undone: one arrow first.'],
    doubt: ofBoth,
  };
  const turned: Way = {
    what: 'weight',
    use: 'weight',
    from: weight,
    steps: wholeSteps(weight, columnWeightLb[weaker ? 'to' : 'from'] * poundForce, weightLb * poundForce),
    figureAt: (to) => (figure * to) / weight,
    barrier: (to) => {
      const turnedTo = after('weight', to);
      return (
        boltBarrier(bundle, weight, to, units) ??
        massBarrier(was, massCheckOf(turnedTo, judged(turnedTo)), units) ??
        (to > weight ? stringBarrier(bundle, turnedTo) : null)
      );
    },
    afterwards: [boltCaution(bundle, !weaker), 'Then brace height, tiller and nocking point again.'],
    doubt: ofShaft,
  };
  return [point, cut, turned];
}
