import { groupMeasures, type GroupMeasures } from '../group/index.ts';
import type { Result } from '../model/problem.ts';
import { acrossText } from '../trials/words.ts';
import type { Asked } from './asked.ts';
import type { Question, QuestionPage } from './question.ts';
import { betweenText, manyText, shotName, tableOf } from './texts.ts';

const ASK = 'What do the left-out shots change?';
const MOST_ROWS = 12;
const TEXT =
  'A shot is left out by a person, with a reason, and stays on the face. The figures on the page are those of the shots that count; these are both. A spread from which shots were taken for lying far out reads too small, and every interval that rests on it is too narrow; one from which shots were taken for what was seen when they were shot does not, if near shots with the same fault were taken too.';

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
    tells: reasonsTold(group.shots.flatMap(({ leftOut }) => leftOut ?? [])),
    page: () => leftOutPage(group, without, all, units),
  };
}

/** Reasons that say no more than where the shot struck. */
const PLACE = /\b(fl[yi]ers?|outliers?|strays?|far|too (high|low|wide|much)|wide)\b/i;
const MOST_REASONS = 2;

/** What the reasons that were given do to the spread. */
function reasonsTold(reasons: readonly string[]): string {
  const different = [...new Set(reasons)];
  const quoted = different.slice(0, MOST_REASONS).map((reason) => `“${reason}”`);
  const more = different.length > MOST_REASONS ? `, and ${manyText(different.length - MOST_REASONS, 'other reason')}` : '';
  const told = `Left out for ${quoted.join(' and ')}${more}.`;
  const [it, was] = reasons.length === 1 ? ['it', 'it was'] : ['them', 'they were'];
  return different.some((reason) => PLACE.test(reason))
    ? `${told} That is where a shot struck: a spread without such shots reads too small.`
    : `${told} If ${was} left out for that alone, the figures without ${it} hold; they read too small if near shots with the same fault still count.`;
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
  const named = group.shots.flatMap((shot) =>
    shot.leftOut === null ? [] : [[shotName(shot, group.shots), shot.leftOut, acrossText(Math.hypot(shot.x, shot.y), units)]],
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
