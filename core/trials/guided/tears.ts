import type { ArrowSet } from '../../model/arrowSet.ts';
import type { Tear } from '../../model/trial.ts';
import { USUAL_TEAR } from './disputed.ts';
import { meanOf, meansDiffer, type Mean } from './meanOf.ts';

/** What the tears of one kind of arrow show. */
export interface TearEvidence {
  readonly fletching: Tear['fletching'];
  readonly n: number;
  readonly across: Mean;
  readonly up: Mean;
  /** The height is plain, and longer than a shaft is thick. */
  readonly vertical: 'nock high' | 'nock low' | null;
  /** Longer than a tuned bow leaves, beyond doubt; read as gross only. */
  readonly gross: 'nock left' | 'nock right' | null;
  /** The height is not the same at all distances. */
  readonly changes: boolean;
}

const FEWEST = 3;
/** A shaft's diameter where none is on record [m], from memory. */
const SHAFT = 0.006;

/**
 * What tears in paper show: the height where it is plain, the side where it is gross.
 *
 * @equation mean ± t s/√n over all tears, or over the means of the distances when these differ in height (F, 5 %); a height counts when its interval leaves out nought and its mean is longer than the shaft is thick; a side when its interval lies beyond 2 in
 * @param tears - the tears of one kind of arrow [list]
 * @param arrowSet - the arrows, for their diameter [record]
 * @returns the evidence; null with fewer than three tears [record]
 * @validity finger-released arrows: to the side zero to about 2 in can come from a tuned bow
 * @source common practice
 * @example tearEvidence([], exampleBundle.arrowSet) // null
 */
export function tearEvidence(tears: readonly Tear[], arrowSet: Pick<ArrowSet, 'diameter'>): TearEvidence | null {
  const [first] = tears;
  if (first === undefined || tears.length < FEWEST) return null;
  const distances = [...new Set(tears.map(({ distance }) => distance))];
  const at = (key: 'across' | 'up') =>
    distances.map((z) => tears.filter(({ distance }) => distance === z).map((tear) => tear[key]));
  const changes = (meansDiffer(at('up')) ?? 1) < 0.05;
  // Where the distances differ, each of them is one reading of the tear: its scatter within a distance would promise too much.
  const values = (key: 'across' | 'up') =>
    changes ? at(key).map((set) => set.reduce((sum, x) => sum + x, 0) / set.length) : tears.map((tear) => tear[key]);
  const [across, up] = [meanOf(values('across')), meanOf(values('up'))];
  if (across === null || up === null) return null;
  const plain = (up.low > 0 || up.high < 0) && Math.abs(up.value) > (arrowSet.diameter ?? SHAFT);
  return {
    fletching: first.fletching,
    n: tears.length,
    across,
    up,
    vertical: plain ? (up.value > 0 ? 'nock high' : 'nock low') : null,
    gross: across.low > USUAL_TEAR ? 'nock right' : across.high < -USUAL_TEAR ? 'nock left' : null,
    changes,
  };
}
