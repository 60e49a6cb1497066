import { useId, useState } from 'react';

interface Props {
  name: string;
  value: number;
  least: number;
  most: number;
  onKeep(value: number): unknown;
}

/** A whole number of arrows or ends. Up and down step it by one. */
export function CountField({ name, value, least, most, onKeep }: Props) {
  const [draft, setDraft] = useState<string | null>(null);
  const [wrong, setWrong] = useState(false);
  const id = useId();
  const keep = (text: string | null) => {
    if (text === null) return;
    const count = /^\s*\d{1,3}\s*$/.test(text) ? Number(text) : NaN;
    const fits = count >= least && count <= most;
    setWrong(!fits);
    if (!fits) return;
    setDraft(count === value ? null : String(count));
    if (count !== value) void Promise.resolve(onKeep(count)).then(() => setDraft((now) => (now === String(count) ? null : now)));
  };
  const step = (by: number) => {
    const next = Math.min(most, Math.max(least, value + by));
    if (next !== value) keep(String(next));
  };
  return (
    <div className="row">
      <label htmlFor={id}>{name}</label>
      <div className="row-value">
        <input
          id={id}
          className="figure count"
          inputMode="numeric"
          autoComplete="off"
          value={draft ?? String(value)}
          data-typing={draft === null ? 'no' : 'yes'}
          aria-invalid={wrong}
          aria-describedby={wrong ? `${id}-wrong` : undefined}
          onChange={(event) => setDraft(event.currentTarget.value)}
          onFocus={(event) => event.currentTarget.select()}
          onBlur={() => keep(draft)}
          onKeyDown={(event) => {
            if (event.key === 'Enter') keep(draft);
            else if (event.key === 'ArrowUp') step(1);
            else if (event.key === 'ArrowDown') step(-1);
            else if (event.key === 'Escape' && (draft !== null || wrong)) {
              setDraft(null);
              setWrong(false);
            } else return;
            event.preventDefault();
          }}
        />
        {wrong && (
          <p id={`${id}-wrong`} className="wrong" role="alert">
            A whole number from {least} to {most} was expected. <span className="still">{value} stays in force.</span>
          </p>
        )}
      </div>
    </div>
  );
}
