import { useEffect, useId, useRef, useState } from 'react';

interface Props {
  name: string;
  value: string;
  onKeep(value: string): void;
  field?: string;
  /** Names may not be empty; notes may. */
  required?: boolean;
  long?: boolean;
  most?: number;
  hint?: string;
}

/** A name or a note: kept when the field is left or Enter is pressed. */
export function Words({ name, value, onKeep, field, required = false, long = false, most = 80, hint }: Props) {
  const [text, setText] = useState(value);
  const [wrong, setWrong] = useState<string | null>(null);
  const typing = useRef(false);
  const id = useId();

  useEffect(() => {
    if (!typing.current) setText(value);
  }, [value]);

  const keep = () => {
    typing.current = false;
    const clean = text.trim();
    if (required && clean === '') {
      setWrong(`A name of 1 to ${most} characters was expected. “${value}” stays.`);
      setText(value);
      return;
    }
    setWrong(null);
    if (clean !== value) onKeep(clean);
  };

  const shared = {
    id,
    'data-field': field,
    value: text,
    maxLength: most,
    'aria-invalid': wrong !== null,
    'aria-describedby': wrong !== null ? `${id}-wrong` : hint === undefined ? undefined : `${id}-hint`,
    onBlur: keep,
  };
  return (
    <div className="row">
      <label htmlFor={id}>{name}</label>
      <div className="row-value">
        {long ? (
          <textarea
            {...shared}
            className="words"
            rows={3}
            onChange={(event) => {
              typing.current = true;
              setText(event.currentTarget.value);
            }}
          />
        ) : (
          <input
            {...shared}
            className="words"
            autoComplete="off"
            onChange={(event) => {
              typing.current = true;
              setText(event.currentTarget.value);
            }}
            onKeyDown={(event) => {
              if (event.key === 'Enter') keep();
              if (event.key === 'Escape') setText(value);
            }}
          />
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
