import { arrowMass } from '../../../core/arrow/index.ts';
import { setupSpeed } from '../../../core/bow/index.ts';
import type { Bundle } from '../../../core/model/bundle.ts';
import type { Problem } from '../../../core/model/problem.ts';

export interface NoFlight {
  readonly title: string;
  /** What is amiss besides figures that nobody entered yet; null where that is all. */
  readonly amiss: string | null;
  /** Without a chronograph nothing tells how fast a compound shoots. */
  readonly estimates: boolean;
}

/** An arrow that weighs what most do, only to ask whether the speed of any could be told [kg]. */
const anyMass = 0.022;

/** What a set-up still lacks for a flight, all of it at once. */
export function noFlight(bundle: Bundle, problem: Problem): NoFlight {
  const { arrowSet, bow } = bundle;
  const heavy = arrowMass(arrowSet).ok;
  const fast = setupSpeed(heavy ? bundle : { ...bundle, arrowSet: { ...arrowSet, weighed: anyMass } }).ok;
  const lacks =
    !heavy && !fast
      ? 'the arrow’s weight and a speed are missing'
      : heavy
        ? 'a speed is missing'
        : 'the arrow’s weight is missing';
  const blank = ['missing', 'compound'].includes(problem.code);
  return {
    title: blank ? `No flight yet: ${lacks}` : 'No flight yet: a figure stands in its way',
    amiss: blank ? null : problem.sentence,
    estimates: bow.bowKind !== 'compound',
  };
}
