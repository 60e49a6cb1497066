import { useId, useState, type ReactNode } from 'react';
import { Fraction } from './Fraction.tsx';
import './sheetRow.css';

interface Props {
  name: string;
  /** What is kept now, in a few words: "12 readings, 10 to 28 in". */
  text: string;
  /** Where a finding's "Fix" lands. */
  field: string;
  hint?: string;
  /** The sheet that the button opens. */
  sheet(close: () => void): ReactNode;
}

/** A row of a form for what takes a whole sheet to enter: its summary is the button that opens the sheet. */
export function SheetRow({ name, text, field, hint, sheet }: Props) {
  const [open, setOpen] = useState(false);
  const id = useId();
  return (
    <div className="row">
      <label id={`${id}-name`} htmlFor={id}>
        {name}
      </label>
      <div className="row-value">
        <button
          id={id}
          type="button"
          className="btn sheet-row"
          data-field={field}
          aria-labelledby={`${id}-name ${id}`}
          aria-haspopup="dialog"
          aria-describedby={hint === undefined ? undefined : `${id}-hint`}
          onClick={() => setOpen(true)}
        >
          <span>
            <Fraction>{text}</Fraction>
          </span>
        </button>
        {hint !== undefined && (
          <p id={`${id}-hint`} className="hint">
            {hint}
          </p>
        )}
      </div>
      {open && sheet(() => setOpen(false))}
    </div>
  );
}
