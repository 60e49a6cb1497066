import type { Measure } from '../../../../core/model/limits.ts';
import { useFigure } from '../../../design/index.ts';

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
}

/** A figure of a mark in its row of the table. */
export function MarkCell({ pencil, ...figure }: Props) {
  const { input, wrong, id, shown } = useFigure(figure);
  return (
    <>
      <input className="figure" aria-label={figure.name} {...input} {...(pencil === undefined ? {} : { placeholder: pencil })} />
      {wrong !== null && (
        <p id={`${id}-wrong`} className="wrong" role="alert">
          {wrong} {shown !== '' && <span className="still">{shown} stays in force.</span>}
        </p>
      )}
    </>
  );
}
