export { readTable } from './readTable.ts';
export { readEntry } from './readCell.ts';
export { readShots, type ReadShot, type ShotsAsked, type ShotsRead } from './readShots.ts';
export { shotLayouts, type ShotLayout } from './shotColumns.ts';
export { tableTold } from './told.ts';
export type { TableColumn, TableRead, TableRow } from './table.ts';
