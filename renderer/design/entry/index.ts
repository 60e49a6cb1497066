export { EntryTable } from './EntryTable.tsx';
export { EntrySheet } from './EntrySheet.tsx';
export { PasteTable } from './PasteTable.tsx';
export { TableFates } from './TableFates.tsx';
export {
  blankCell,
  figureCell,
  isBlank,
  tableColumns,
  typedCell,
  withSpare,
  wordCell,
  wrongIn,
  type Cell,
  type EntryColumn,
  type EntryRow,
} from './cells.ts';
export { pastedCells, rowsOfTable } from './paste.ts';
export { togetherFromTable, togetherOf, type TogetherSheet } from './together.ts';
