import { useEffect, useRef, type ClipboardEvent, type KeyboardEvent } from 'react';
import type { Cell, EntryColumn } from './cells.ts';

interface Props {
  column: EntryColumn;
  cell: Cell;
  name: string;
  /** "row column", by which the table finds it again. */
  at: string;
  /** The sheet opens with this cell in hand. */
  first: boolean;
  /** The element that says what is wrong with it. */
  wrongId?: string;
  onType(text: string): void;
  onLeave(): void;
  onKeyDown(event: KeyboardEvent<HTMLElement>): void;
  onPaste(event: ClipboardEvent): void;
}

/** One cell of an entry table: a field, a list, a tick, or what the table tells of the row. */
export function EntryCell({ column, cell, name, at, first, wrongId, onType, onLeave, onKeyDown, onPaste }: Props) {
  const element = useRef<HTMLInputElement>(null);
  // A dialog asks for this attribute when it opens; React would only focus, before the dialog is there.
  useEffect(() => {
    element.current?.toggleAttribute('autofocus', first);
  }, [first]);
  const shared = { 'aria-label': name, 'data-cell': at, onKeyDown };
  switch (column.kind) {
    case 'told':
      return <span className="told">{cell.text}</span>;
    case 'choice':
      return (
        <select
          {...shared}
          className="entry-choice"
          data-value={cell.text}
          value={cell.text}
          onChange={(event) => onType(event.currentTarget.value)}
        >
          {column.options.map(({ value, text }) => (
            <option key={value} value={value}>
              {text}
            </option>
          ))}
        </select>
      );
    case 'tick':
      return (
        <input
          {...shared}
          type="checkbox"
          checked={cell.text !== ''}
          onChange={(event) => onType(event.currentTarget.checked ? 'yes' : '')}
        />
      );
    default:
      return (
        <input
          {...shared}
          ref={element}
          type="text"
          className="entry-cell"
          value={cell.text}
          autoComplete="off"
          spellCheck={false}
          maxLength={column.kind === 'words' ? column.most : undefined}
          aria-invalid={wrongId !== undefined}
          aria-describedby={wrongId}
          onChange={(event) => onType(event.currentTarget.value)}
          onFocus={(event) => event.currentTarget.select()}
          onBlur={onLeave}
          onPaste={onPaste}
        />
      );
  }
}
