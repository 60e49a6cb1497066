export { readTable } from './readTable.ts';
export { readEntry } from './readCell.ts';
export { tableTold } from './told.ts';
export type { TableColumn, TableRead, TableRow } from './table.ts';
