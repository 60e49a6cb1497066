import { useId, useRef, useState, type ClipboardEvent, type KeyboardEvent } from 'react';
import { together } from '../../../core/model/sentence.ts';
import type { TableRead } from '../../../core/tables/index.ts';
import { useUnits } from '../../state/useBench.ts';
import { headOf, settledCell, typedCell, withSpare, wordCell, wrongIn, type EntryColumn, type EntryRow } from './cells.ts';
import { EntryCell } from './EntryCell.tsx';
import { moved, type At } from './move.ts';
import { isTable, pasteAt } from './paste.ts';
import './entryTable.css';

interface Props<K extends string> {
  /** For ears: what the table is. */
  name: string;
  columns: readonly EntryColumn<K>[];
  /** The last one is kept blank by the table: whoever types in it gets the next. */
  rows: readonly EntryRow<K>[];
  blank: EntryRow<K>;
  most: number;
  onChange(rows: readonly EntryRow<K>[]): void;
  /** What a pasted table may fill, where that is more than is shown. */
  pasted?: readonly EntryColumn<K>[];
  /** A table was pasted into a cell: what became of its lines. */
  onPasted?(read: TableRead): void;
  /** "row 3", "arrow 7". */
  rowName?(row: EntryRow<K>, index: number): string;
  /** Enter goes on to the next cell of the row, or down the column. */
  enter?: 'across' | 'down';
  /** What there is to say of a row that can be kept all the same. */
  remarks?(index: number): readonly string[];
}

/**
 * A table to type into. Every cell is a field of its own with its name; the arrow keys move between them, Enter goes on, a pasted table fills
 * from the cell it was pasted into, Ctrl+Delete takes the row out. Nothing here is kept: the sheet around it does that, in one Change.
 */
export function EntryTable<K extends string>({
  name,
  columns,
  rows,
  blank,
  most,
  onChange,
  pasted: fills = columns,
  onPasted,
  rowName = (_, index) => `row ${index + 1}`,
  enter = 'across',
  remarks: remarksOf,
}: Props<K>) {
  const units = useUnits();
  const table = useRef<HTMLTableElement>(null);
  const id = useId();
  /** The cell that is being typed in: what is wrong with it is said when it is left. */
  const [typing, setTyping] = useState<At | null>(null);

  const focus = ({ row, column }: At) => {
    const cell = table.current?.querySelector<HTMLElement>(`[data-cell="${row} ${column}"]`);
    cell?.focus();
    if (cell instanceof HTMLInputElement && cell.type === 'text') cell.select();
  };
  const change = (next: readonly EntryRow<K>[]) => onChange(withSpare(next, blank, most));
  const put = (at: At, text: string, settle: boolean) => {
    const column = columns[at.column];
    const row = rows[at.row];
    if (column === undefined || row === undefined) return;
    const was = row[column.key];
    const read = column.kind === 'figure' || column.kind === 'number';
    const cell = settle ? settledCell(column, was, units) : read ? typedCell(column, text, units) : wordCell(text);
    if (cell.text === was.text && cell.si === was.si) return;
    change(rows.map((one, i) => (i === at.row ? { ...one, [column.key]: cell } : one)));
  };
  const takeOut = (index: number) => {
    change(rows.filter((_, i) => i !== index));
    // After the row is gone; the one that moved up takes its place.
    requestAnimationFrame(() => focus({ row: Math.max(0, Math.min(index, rows.length - 2)), column: 0 }));
  };

  const onKeyDown = (event: KeyboardEvent<HTMLElement>, at: At) => {
    if (event.ctrlKey && event.key === 'Delete' && at.row < rows.length - 1) {
      event.preventDefault();
      takeOut(at.row);
      return;
    }
    if (event.ctrlKey || event.altKey || event.metaKey || (event.shiftKey && event.key !== 'Enter')) return;
    if (!leaves(event.currentTarget, event.key)) return;
    // Enter goes from field to field; the arrow keys reach the row's "Delete" too.
    const size = { rows: rows.length, columns: columns.length + (event.key === 'Enter' ? 0 : 1) };
    let to = moved(at, size, event.key, event.shiftKey, enter);
    while (to !== null && columns[to.column]?.kind === 'told') to = moved(to, size, event.key, event.shiftKey, enter);
    if (to === null && event.key !== 'Enter') return;
    event.preventDefault();
    if (to !== null) focus(to);
  };

  const onPaste = (event: ClipboardEvent, at: At) => {
    const text = event.clipboardData.getData('text/plain');
    const kind = columns[at.column]?.kind;
    if (!isTable(text) || (kind !== 'figure' && kind !== 'number')) return;
    event.preventDefault();
    const pasted = pasteAt(rows, blank, fills, at, text, units, most);
    setTyping(null);
    change(pasted.rows);
    onPasted?.(pasted.read);
  };

  const wrongs = rows.flatMap((row, index) =>
    columns.flatMap((column, place) => {
      const open = typing?.row === index && typing.column === place;
      const sentence = open ? null : wrongIn(column, row[column.key], units);
      return sentence === null ? [] : [{ index, place, sentence, where: `${column.name}, ${rowName(row, index)}` }];
    }),
  );
  const remarks = rows.map((row, index) => ({ where: rowName(row, index), sentences: remarksOf?.(index) ?? [] }));
  /** What holds for several rows is said once. */
  const spoken = new Map<string, string[]>();
  for (const { where, sentences } of remarks)
    for (const sentence of sentences) spoken.set(sentence, [...(spoken.get(sentence) ?? []), where]);

  return (
    <>
      <table ref={table} className="entry-table" aria-label={name}>
        <thead>
          <tr>
            {columns.map((column) => (
              <th key={column.key} scope="col" className={`cell-${column.kind}`}>
                {headOf(column, units)}
              </th>
            ))}
            <th scope="col">
              <span className="heard">Delete</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row, index) => (
            <tr key={index} className={(remarks[index]?.sentences.length ?? 0) > 0 ? 'remarked' : undefined}>
              {columns.map((column, place) => {
                const at = { row: index, column: place };
                const wrong = wrongs.findIndex((one) => one.index === index && one.place === place);
                return (
                  <td key={column.key} className={`cell-${column.kind}`}>
                    <EntryCell
                      column={column}
                      cell={row[column.key]}
                      name={`${column.name}, ${rowName(row, index)}`}
                      at={`${index} ${place}`}
                      first={index === 0 && place === 0}
                      {...(wrong < 0 ? {} : { wrongId: `${id}-${wrong}` })}
                      onType={(text) => {
                        setTyping(at);
                        put(at, text, false);
                      }}
                      onLeave={() => {
                        setTyping(null);
                        put(at, '', true);
                      }}
                      onKeyDown={(event) => onKeyDown(event, at)}
                      onPaste={(event) => onPaste(event, at)}
                    />
                  </td>
                );
              })}
              <td className="row-out">
                {index < rows.length - 1 && (
                  <button
                    type="button"
                    className="link"
                    tabIndex={-1}
                    data-cell={`${index} ${columns.length}`}
                    onClick={() => takeOut(index)}
                    onKeyDown={(event) => event.key !== 'Enter' && onKeyDown(event, { row: index, column: columns.length })}
                  >
                    Delete<span className="heard"> {rowName(row, index)}</span>
                  </button>
                )}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      {wrongs.length + spoken.size > 0 && (
        <ul className="entry-remarks">
          {wrongs.map(({ where, sentence }, i) => (
            <li key={where} id={`${id}-${i}`} className="wrong">
              {where}: {sentence}
            </li>
          ))}
          {[...spoken].map(([sentence, where]) => (
            <li key={sentence} className="caution-text">
              {together(where)}: {sentence}
            </li>
          ))}
        </ul>
      )}
    </>
  );
}

/** Left and right stay in the text until its end; a list keeps up and down for its own choices. */
function leaves(element: HTMLElement, key: string): boolean {
  if (element instanceof HTMLSelectElement) return key === 'Enter' || key === 'ArrowLeft' || key === 'ArrowRight';
  if (!(element instanceof HTMLInputElement) || element.type !== 'text' || !/^Arrow(Left|Right)$/.test(key)) return true;
  const { selectionStart, selectionEnd, value } = element;
  if (selectionStart === 0 && selectionEnd === value.length) return true;
  return selectionStart === selectionEnd && selectionStart === (key === 'ArrowLeft' ? 0 : value.length);
}
