import { flightRows } from './flight.ts';
import { groupRows } from './groups.ts';
import { notebookRows } from './notebook.ts';
import type { Row } from './row.ts';
import { screenRows } from './screens.ts';
import { setupRows } from './setup.ts';
import { strokeRows } from './stroke.ts';

/** Every figure of the bench, one room after the other, told as they come. */
export async function benchRows(folder: string, tell: (rows: readonly Row[]) => void): Promise<Row[]> {
  const rows: Row[] = [];
  for (const room of [groupRows, setupRows, screenRows, strokeRows, flightRows, () => notebookRows(folder)]) {
    const found = await room();
    rows.push(...found);
    tell(found);
  }
  return rows;
}
