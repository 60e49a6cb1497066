export interface At {
  readonly row: number;
  readonly column: number;
}

/** How far a key moves within the table, or null when the key is the field's own. */
export function moved(
  at: At,
  size: { readonly rows: number; readonly columns: number },
  key: string,
  back: boolean,
  enter: 'across' | 'down',
): At | null {
  const { row, column } = at;
  const inside = (to: At): At | null =>
    to.row < 0 || to.row >= size.rows || to.column < 0 || to.column >= size.columns ? null : to;
  switch (key) {
    case 'ArrowUp':
      return inside({ row: row - 1, column });
    case 'ArrowDown':
      return inside({ row: row + 1, column });
    case 'ArrowLeft':
      return inside({ row, column: column - 1 });
    case 'ArrowRight':
      return inside({ row, column: column + 1 });
    case 'Enter':
      return enter === 'down' ? inside({ row: row + (back ? -1 : 1), column }) : inside(next(at, size.columns, back));
    default:
      return null;
  }
}

function next({ row, column }: At, columns: number, back: boolean): At {
  const to = row * columns + column + (back ? -1 : 1);
  return { row: Math.floor(to / columns), column: to - Math.floor(to / columns) * columns };
}
