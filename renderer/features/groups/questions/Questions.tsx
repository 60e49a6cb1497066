import { useMemo, useState } from 'react';
import type { Question, QuestionInput } from '../../../../core/questions/index.ts';
import { counted } from '../../../../core/model/group.ts';
import type { Bundle } from '../../../../core/model/bundle.ts';
import { Fraction } from '../../../design/index.ts';
import { groupsOfBow, walkBackGroups } from '../../../state/selectors.ts';
import { useBench, useUnits } from '../../../state/useBench.ts';
import type { OneGroup } from '../derive.ts';
import { LeaveOut } from '../entry/LeaveOut.tsx';
import { setEntry } from '../entry/store.ts';
import { QuestionPage } from './QuestionPage.tsx';
import { useQuestions } from './useQuestions.ts';
import './questions.css';

interface Props {
  bundle: Bundle;
  first: OneGroup;
  second: OneGroup | null;
  /** The group that takes the next shot: asked about first. */
  entering: OneGroup;
  shaftRadius: number;
}

/** Below this nothing can be answered, and ten questions that wait are no list. */
const LEAST = 2;
const WAITING =
  'From two shots on: is it on the aim, how big is it, is there a flyer, is one arrow odd, did it drift, is it tighter than before, what would it score. Number the arrows and note the ends, and all of it can be asked.';

/** What is asked at 1 in 20; the shape is asked twice, height against width and then an oval that leans. */
const atOneInTwenty: readonly Question['id'][] = ['aim', 'flyer', 'odd', 'drift', 'tighter', 'shape', 'shape', 'one centre'];

function byChance(questions: readonly Question[]): string {
  const asked = atOneInTwenty.filter((each) => questions.some(({ id }) => id === each)).length;
  const shown = Math.round(100 * (1 - 0.95 ** asked));
  return `Up to ${asked} tests stand behind these, at 1 in 20 each: at most about ${shown} of 100 good groups show something by chance alone.`;
}

const WALK_BACK =
  'Shot for a walk-back, at one mark with one sight setting for all distances: where it lies is read there, on the page of the trial, and no score is asked of it here.';

/** What a technician asks of one group: a list of short answers, each with a page behind it. */
export function Questions({ bundle, first, second, entering, shaftRadius }: Props) {
  const units = useUnits();
  const others = useBench((state) => groupsOfBow(state.records, bundle.archer.id, bundle.bow.id));
  const walkBack = useBench((state) => walkBackGroups(state.records));
  const [turned, setTurned] = useState<string | null>(null);
  const both = second === null ? [first] : [first, second];
  const about = both.find(({ group }) => group.id === turned) ?? entering;
  const beside = both.find((one) => one !== about) ?? null;
  const input: QuestionInput = useMemo(
    () => ({ group: about.group, beside: beside?.group ?? null, others, walkBack, bundle, shaftRadius, units }),
    [about.group, beside?.group, others, walkBack, bundle, shaftRadius, units],
  );
  const answered = useQuestions(input);
  const few = counted(about.group).length < LEAST;
  const [open, setOpen] = useState<Question['id'] | null>(null);
  const page = answered?.questions.find(({ id }) => id === open) ?? null;
  const same = second !== null && first.group.fletching === second.group.fletching;
  const name = (one: OneGroup) => (same ? (one === first ? 'first' : 'second') : one.group.fletching);
  return (
    <section className="questions" aria-label={`Asked of the ${name(about)} group`} aria-busy={answered?.input !== input}>
      <h2 className="plate">Asked of the {name(about)} group</h2>
      {beside !== null && (
        <button type="button" className="link" onClick={() => setTurned(beside.group.id)}>
          Ask the {name(beside)} one
        </button>
      )}
      {few && <p className="note">{WAITING}</p>}
      {!few && walkBack.has(about.group.id) && <p className="note">{WALK_BACK}</p>}
      <ul hidden={few}>
        {answered?.questions.map((question) => (
          <li key={question.id} className={`says-${question.standing}`}>
            <button type="button" className="link" onClick={() => setOpen(question.id)}>
              {question.ask}
            </button>
            <p>
              <Fraction>{question.answer}</Fraction>
              {question.tells !== null && (
                <span className="tells">
                  {' '}
                  <Fraction>{question.tells}</Fraction>
                </span>
              )}
              {question.named?.map(({ shot, name: shotName }) => (
                <span key={shot}>
                  {' '}
                  <button type="button" className="link" onClick={() => setEntry(about.group.id, { leaving: shot })}>
                    Leave {shotName} out
                  </button>
                </span>
              ))}
            </p>
          </li>
        ))}
      </ul>
      {/* The group that takes the next shot has this page beside its face. */}
      {about !== entering && <LeaveOut group={about.group} />}
      {answered !== null && !few && <p className="tick-note">{byChance(answered.questions)}</p>}
      {answered !== null && page !== null && (
        <QuestionPage question={page} input={answered.input} onClose={() => setOpen(null)} />
      )}
    </section>
  );
}
