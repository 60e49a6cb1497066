import { useId, useState, type KeyboardEvent } from 'react';

interface Props {
  name: string;
  value: string;
  /** What it returns is waited for. */
  onKeep(value: string): unknown;
  field?: string;
  /** Names may not be empty; notes may. */
  required?: boolean;
  long?: boolean;
  most?: number;
  hint?: string;
}

/** A name or a note: kept when the field is left or Enter is pressed, and only when something was typed. */
export function Words({ name, value, onKeep, field, required = false, long = false, most = 80, hint }: Props) {
  const [draft, setDraft] = useState<string | null>(null);
  const [wrong, setWrong] = useState<string | null>(null);
  const id = useId();

  const keep = () => {
    if (draft === null) return;
    const clean = draft.trim();
    if (required && clean === '') {
      setWrong(`A name of 1 to ${most} characters was expected. “${value}” stays.`);
      setDraft(null);
      return;
    }
    setWrong(null);
    setDraft(clean === value ? null : clean);
    if (clean !== value) void Promise.resolve(onKeep(clean)).then(() => setDraft((now) => (now === clean ? null : now)));
  };

  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key === 'Enter' && !long) keep();
    if (event.key === 'Escape' && draft !== null) {
      event.preventDefault();
      event.stopPropagation();
      setDraft(null);
    }
  };

  const described = [hint === undefined ? null : `${id}-hint`, wrong === null ? null : `${id}-wrong`]
    .filter((part) => part !== null)
    .join(' ');
  const shared = {
    id,
    className: 'words',
    'data-field': field,
    'data-typing': draft === null ? 'no' : 'yes',
    value: draft ?? value,
    maxLength: most,
    'aria-invalid': wrong !== null,
    'aria-describedby': described === '' ? undefined : described,
    onBlur: keep,
    onKeyDown,
  };
  return (
    <div className="row">
      <label htmlFor={id}>{name}</label>
      <div className="row-value">
        {long ? (
          <textarea {...shared} rows={3} onChange={(event) => setDraft(event.currentTarget.value)} />
        ) : (
          <input {...shared} autoComplete="off" onChange={(event) => setDraft(event.currentTarget.value)} />
        )}
        {hint !== undefined && (
          <p id={`${id}-hint`} className="hint">
            {hint}
          </p>
        )}
        {wrong !== null && (
          <p id={`${id}-wrong`} className="wrong" role="alert">
            {wrong}
          </p>
        )}
      </div>
    </div>
  );
}
