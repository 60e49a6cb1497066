import type { Shot } from '../../../../core/model/group.ts';
import type { UnitChoice } from '../../../../core/model/preferences.ts';
import {
  blankCell,
  figureCell,
  isBlank,
  wordCell,
  wrongIn,
  type Cell,
  type EntryColumn,
  type EntryRow,
} from '../../../design/entry/index.ts';

type ShotKey = 'arrow' | 'end' | 'x' | 'y' | 'leftOut';
/** The shot that a row was made of stands in it unseen. */
export type ShotRow = EntryRow<ShotKey | 'id'>;

/** Beyond this many the shots are not typed but read from a table [count]. */
export const MOST_TYPED = 300;

export const shotColumns: readonly EntryColumn<ShotKey | 'id'>[] = [
  { key: 'arrow', name: 'arrow', kind: 'number', most: 999, also: ['no', 'number'] },
  { key: 'end', name: 'end', kind: 'number', most: 9999 },
  { key: 'x', name: 'across', kind: 'figure', measure: 'shotOffset', also: ['x', 'right'] },
  { key: 'y', name: 'up', kind: 'figure', measure: 'shotOffset', also: ['y', 'height'] },
  { key: 'leftOut', name: 'left out because', kind: 'words', most: 200 },
];

export const blankShot: ShotRow = {
  id: blankCell,
  arrow: blankCell,
  end: blankCell,
  x: blankCell,
  y: blankCell,
  leftOut: blankCell,
};

const number = (value: number | null): Cell => (value === null ? blankCell : { text: String(value), si: value });

export const shotRows = (shots: readonly Shot[], units: UnitChoice): readonly ShotRow[] =>
  shots.map(({ id, arrow, end, x, y, leftOut }) => ({
    id: number(id),
    arrow: number(arrow),
    end: number(end),
    x: figureCell(x, 'shotOffset', units),
    y: figureCell(y, 'shotOffset', units),
    leftOut: wordCell(leftOut ?? ''),
  }));

/** A shot before the notebook has it: without an id when it is new. */
export type RowShot = Omit<Shot, 'id'> & { readonly id: number | null };

/** What the rows come to, or why they cannot be kept as they stand. */
export function shotsOf(
  rows: readonly ShotRow[],
  units: UnitChoice,
): { readonly shots: readonly RowShot[]; readonly wrong: string | null } {
  const shots: RowShot[] = [];
  let wrong: string | null = null;
  rows.forEach((row, index) => {
    if (isBlank(row, blankShot)) return;
    const unread = shotColumns.map((column) => wrongIn(column, row[column.key], units)).find((sentence) => sentence !== null);
    const { x, y } = row;
    if (unread !== undefined) wrong ??= `Row ${index + 1}: ${unread ?? ''}`;
    else if (x.si === null || y.si === null) wrong ??= `Row ${index + 1}: a shot needs both figures, across and up.`;
    else {
      const [arrow, end, id] = [row.arrow.si, row.end.si, row.id.si];
      const reason = row.leftOut.text.trim();
      shots.push({ id, x: x.si, y: y.si, arrow, end, leftOut: reason === '' ? null : reason });
    }
  });
  return { shots, wrong };
}
