import { flightRows } from './flight.ts';
import { groupRows } from './groups.ts';
import { notebookRows } from './notebook.ts';
import type { Row } from './row.ts';
import { screenRows } from './screens.ts';
import { setupRows } from './setup.ts';
import { strokeRows } from './stroke.ts';

/** The rooms whose figures need no browser, by name, in their order. */
export const rooms: Readonly<Record<string, (folder: string) => Row[] | Promise<Row[]>>> = {
  groups: groupRows,
  setup: setupRows,
  screens: screenRows,
  stroke: strokeRows,
  'flight and aim': flightRows,
  notebook: notebookRows,
};
