import { useId, useState, type ChangeEvent, type FocusEvent, type KeyboardEvent } from 'react';
import type { Result } from '../../../core/model/problem.ts';
import { FigureNotes } from '../../design/index.ts';

type Typed = HTMLInputElement | HTMLTextAreaElement;

interface Props<T> {
  name: string;
  kind: 'count' | 'list';
  value: T;
  show(value: T): string;
  read(text: string): Result<T>;
  same(one: T, other: T): boolean;
  /** What "stays in force" when a text cannot be read. */
  still: string;
  /** The value that many steps up or down; left out where there is no such thing. */
  stepped?(by: 1 | -1): T;
  onKeep(value: T): unknown;
}

/** One figure of the plan, or several in one field: Enter and Tab keep it, Esc gives the old one back. */
export function PlanField<T>({ name, kind, value, show, read, same, still, stepped, onKeep }: Props<T>) {
  const [draft, setDraft] = useState<string | null>(null);
  const [wrong, setWrong] = useState<string | null>(null);
  const id = useId();
  const keep = (text: string | null) => {
    if (text === null) return;
    const answer = read(text);
    setWrong(answer.ok ? null : answer.problem.sentence);
    if (!answer.ok) return;
    const stays = text.trim() === show(value) || same(answer.value, value);
    const settled = show(answer.value);
    // What was typed stands until the notebook has it, so that the old figure does not flash back.
    setDraft(stays ? null : settled);
    if (!stays) void Promise.resolve(onKeep(answer.value)).then(() => setDraft((now) => (now === settled ? null : now)));
  };
  const step = (by: 1 | -1) => {
    const next = stepped?.(by);
    if (next !== undefined && !same(next, value)) keep(show(next));
  };
  // A list may take more lines than one; Enter keeps it all the same.
  const Field = kind === 'list' ? 'textarea' : 'input';
  return (
    <div className="row">
      <label htmlFor={id}>{name}</label>
      <div className="row-value">
        <Field
          id={id}
          {...(kind === 'list' ? { rows: 1 } : {})}
          className={`figure ${kind}`}
          inputMode={kind === 'count' ? 'numeric' : undefined}
          autoComplete="off"
          spellCheck={false}
          value={draft ?? show(value)}
          data-typing={draft === null ? 'no' : 'yes'}
          aria-invalid={wrong !== null}
          aria-describedby={wrong === null ? undefined : `${id}-wrong`}
          onChange={(event: ChangeEvent<Typed>) => setDraft(event.currentTarget.value)}
          onFocus={(event: FocusEvent<Typed>) => event.currentTarget.select()}
          onBlur={() => keep(draft)}
          onKeyDown={(event: KeyboardEvent) => {
            if (event.key === 'Enter') keep(draft);
            else if (event.key === 'ArrowUp' && stepped !== undefined) step(1);
            else if (event.key === 'ArrowDown' && stepped !== undefined) step(-1);
            else if (event.key === 'Escape' && (draft !== null || wrong !== null)) {
              setDraft(null);
              setWrong(null);
            } else return;
            event.preventDefault();
          }}
        />
        <FigureNotes id={id} wrong={wrong} shown={still} />
      </div>
    </div>
  );
}
