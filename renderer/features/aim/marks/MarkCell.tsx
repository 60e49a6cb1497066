import type { KeyboardEvent } from 'react';
import type { Measure } from '../../../../core/model/limits.ts';
import { useFigure } from '../../../design/index.ts';
import { keepFocus } from '../../frame/keepFocus.ts';
import { goRow } from './goRow.ts';

interface Props {
  measure: Measure;
  /** For ears: the column with its row. */
  name: string;
  field: string;
  value: number | null;
  /** Shown in pencil while there is none. */
  pencil?: string;
  required?: boolean;
  onKeep(value: number | null): unknown;
  /** Takes the row out of the table. */
  onTakeOut(): Promise<unknown>;
}

/** A figure of a mark in its row of the table: up and down go to the row above and below, and step nothing. */
export function MarkCell({ pencil, onTakeOut, ...figure }: Props) {
  const { input, wrong, id, shown } = useFigure(figure);
  const onKeyDown = (event: KeyboardEvent<HTMLInputElement>) => {
    if (event.ctrlKey && event.key === 'Delete') {
      event.preventDefault();
      void onTakeOut().then(keepFocus);
    } else if (event.key === 'ArrowUp' || event.key === 'ArrowDown') {
      event.preventDefault();
      goRow(event.currentTarget, event.key === 'ArrowUp' ? -1 : 1);
    } else input.onKeyDown?.(event);
  };
  return (
    <>
      <input
        className="figure"
        aria-label={figure.name}
        {...input}
        {...(pencil === undefined ? {} : { placeholder: pencil })}
        onKeyDown={onKeyDown}
      />
      {wrong !== null && (
        <p id={`${id}-wrong`} className="wrong" role="alert">
          {wrong} {shown !== '' && <span className="still">{shown} stays in force.</span>}
        </p>
      )}
    </>
  );
}
