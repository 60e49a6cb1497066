import { groupMeasures, type GroupMeasures } from '../group/index.ts';
import type { Result } from '../model/problem.ts';
import { acrossText } from '../trials/words.ts';
import type { Asked } from './asked.ts';
import type { Question, QuestionPage } from './question.ts';
import { betweenText, shotName, tableOf } from './texts.ts';

const ASK = 'What do the left-out shots change?';
const MOST_ROWS = 12;
const TEXT =
  'A shot is left out by a person, with a reason, and stays on the face. The figures on the page are those of the shots that count; these are both. A spread from which far shots were taken reads too small, and every interval that rests on it is too narrow.';

/**
 * What the shots that somebody left out would change; nothing where there are none.
 *
 * @equation groupMeasures of all shots beside those of the shots that count
 * @param asked - the group made ready [record]
 * @returns the question with its answer, or null when every shot counts [record]
 * @validity any group
 * @source own derivation
 * @example leftOutQuestion(asked({ group: exampleFletched, beside: null, others: [], bundle: exampleBundle, shaftRadius: 0.0029, units: defaultPreferences.units })) // null
 */
export function leftOutQuestion({ group, shots, units }: Asked): Question | null {
  const out = group.shots.length - shots.length;
  if (out === 0) return null;
  const without = groupMeasures(shots);
  const all = groupMeasures(group.shots);
  const radius = (found: Result<GroupMeasures>): string => (found.ok ? acrossText(found.value.meanRadiusOfMany, units) : '–');
  return {
    id: 'left out',
    ask: ASK,
    answer: `${out} of ${group.shots.length} left out: mean radius of many ${radius(without)} without, ${radius(all)} with.`,
    state: 'yes',
    standing: 'act',
    tells: 'The spread without them reads too small: shots were chosen for where they lie.',
    page: () => leftOutPage(group, without, all, units),
  };
}

function leftOutPage(
  group: Asked['group'],
  without: Result<GroupMeasures>,
  all: Result<GroupMeasures>,
  units: Asked['units'],
): QuestionPage {
  const figures = (found: Result<GroupMeasures>): string[] =>
    found.ok
      ? [
          String(found.value.n),
          acrossText(found.value.meanRadiusOfMany, units),
          betweenText(found.value.meanRadiusInterval, units),
          acrossText(found.value.extremeSpread, units),
        ]
      : ['–', '–', '–', '–'];
  const named = group.shots.flatMap((shot, index) =>
    shot.leftOut === null ? [] : [[shotName(shot, index), shot.leftOut, acrossText(Math.hypot(shot.x, shot.y), units)]],
  );
  return {
    tables: [
      tableOf(
        ['', 'shots', 'mean radius of many', '95 %', 'widest'],
        [
          ['without', ...figures(without)],
          ['with', ...figures(all)],
        ],
        ['without'],
      ),
      tableOf(['left out', 'reason', 'from the middle'], named.slice(0, MOST_ROWS)),
    ],
    notes: named.length > MOST_ROWS ? [`${named.length - MOST_ROWS} more are left out.`] : [],
    plot: null,
    why: { title: ASK, text: TEXT, equation: null, symbols: [], source: 'own derivation' },
  };
}
