import { capital } from '../findings/parts.ts';
import { shiftOfGroups } from '../group/index.ts';
import { counted, type ShotGroup } from '../model/group.ts';
import type { UnitChoice } from '../model/preferences.ts';
import { refuse } from '../model/problem.ts';
import { contextDifferences } from './context.ts';
import type { TwoGroups } from './reading.ts';
import { verdictWords } from './sentences.ts';
import { emptyWhy, shiftWhy } from './shiftWhy.ts';

const counts: Readonly<Record<number, string>> = { 2: 'Two', 3: 'Three', 4: 'Four', 5: 'Five', 6: 'Six' };

/**
 * What one group says beside another of its kind: where it lies, how sure that is, and what else was not the same.
 *
 * @equation the shift of b from a, and its verdict; no stiff or weak
 * @param a - the group counted from [record]
 * @param b - the other group [record]
 * @param units - the person's choice of units [record]
 * @returns sentences, shift and differences; a problem when the groups cannot be compared [record]
 * @validity one distance, two or more arrows of each, both fletched or both bare; shots left out are not compared
 * @source own derivation
 * @example readTwoGroups(exampleFletched, { ...exampleBare, fletching: 'fletched' }, defaultPreferences.units).headline // "The second group lands 43 mm right of the first, and that is real"
 */
export function readTwoGroups(a: ShotGroup, b: ShotGroup, units: UnitChoice): TwoGroups {
  const differences = contextDifferences(a, b, units);
  const voids = differences.find((difference) => difference.voids);
  const answer =
    a.fletching !== b.fletching
      ? refuse('fletching', 'Two groups of a kind were expected, both fletched or both bare.')
      : voids === undefined
        ? shiftOfGroups(counted(a), counted(b))
        : refuse(voids.key, voids.sentence);
  if (!answer.ok) {
    const sentence = answer.problem.sentence
      .replace('the reference group', 'the first group')
      .replace('the other group', 'the second group');
    const problem = { ...answer.problem, sentence: capital(sentence) };
    return {
      headline: 'No comparison',
      subline: problem.sentence,
      shift: null,
      problem,
      differences,
      why: emptyWhy(problem.sentence),
    };
  }
  const { headline, subline } = verdictWords(
    answer.value,
    { moved: 'The second group', verb: 'lands', from: 'the first' },
    units,
  );
  const beside = differences.some(({ equipment }) => !equipment);
  const kit = differences.filter(({ equipment }) => equipment).length;
  const remarks = [
    kit > 1 ? `${counts[kit] ?? kit} things of the equipment differ: which of them did it cannot be told.` : '',
    beside ? 'The difference is not the equipment\u2019s alone.' : '',
  ].filter((remark) => remark !== '');
  return {
    headline,
    subline: [subline, ...remarks].join(' '),
    shift: answer.value,
    problem: null,
    differences,
    why: shiftWhy(answer.value, units),
  };
}
