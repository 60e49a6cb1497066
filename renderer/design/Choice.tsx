import { useId, useState } from 'react';

interface Props<T extends string> {
  name: string;
  value: T;
  options: readonly { readonly value: T; readonly text: string }[];
  /** What it returns is waited for. */
  onKeep(value: T): unknown;
  hint?: string;
  field?: string;
}

/** One of a few: the system's own list, so that it works with every keyboard, finger and screen reader. */
export function Choice<T extends string>({ name, value, options, onKeep, hint, field }: Props<T>) {
  const id = useId();
  /** What was just chosen: it stands until the store has it, so that the old one does not flash up, nor the next key start from it. */
  const [chosen, setChosen] = useState<T | null>(null);
  const keep = (next: T) => {
    setChosen(next);
    void Promise.resolve(onKeep(next)).then(() => setChosen((now) => (now === next ? null : now)));
  };
  return (
    <div className="row">
      <label htmlFor={id}>{name}</label>
      <div className="row-value">
        <select
          id={id}
          className="choice"
          data-field={field}
          value={chosen ?? value}
          aria-describedby={hint === undefined ? undefined : `${id}-hint`}
          onChange={(event) => keep(event.currentTarget.value as T)}
        >
          {options.map((option) => (
            <option key={option.value} value={option.value}>
              {option.text}
            </option>
          ))}
        </select>
        {hint !== undefined && (
          <p id={`${id}-hint`} className="hint">
            {hint}
          </p>
        )}
      </div>
    </div>
  );
}

/** Options whose text is their own value. */
export const plain = <T extends string>(...values: readonly T[]): readonly { value: T; text: string }[] =>
  values.map((value) => ({ value, text: value }));
