interface Props {
  /** Of the field. */
  id: string;
  hint?: string | undefined;
  /** Why what was typed cannot be kept. */
  wrong: string | null;
  /** What stays in force then; empty when there is nothing. */
  shown: string;
}

/** What stands under a figure: what it means, and why what was typed cannot be kept. */
export function FigureNotes({ id, hint, wrong, shown }: Props) {
  return (
    <>
      {hint !== undefined && (
        <p id={`${id}-hint`} className="hint">
          {hint}
        </p>
      )}
      {wrong !== null && (
        <p id={`${id}-wrong`} className="wrong" role="alert">
          {wrong} {shown === '' ? 'Nothing is kept yet.' : <span className="still">{shown} stays in force.</span>}
        </p>
      )}
    </>
  );
}
