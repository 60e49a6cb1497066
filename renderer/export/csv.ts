/** A table to be written out: names of the columns with their units, then rows; null is a cell that nobody filled. */
export interface CsvTable {
  readonly columns: readonly string[];
  readonly rows: readonly (readonly (string | number | null)[])[];
}

/** A figure with as many decimals as anybody reads. */
export const inFigures = (value: number): number => Number(value.toFixed(3));

/** A text that a spreadsheet would take for a formula gets an apostrophe before it: names in a notebook may come from anywhere. */
const harmless = (text: string): string => (/^[=+\-@\t\r]/.test(text) ? `'${text}` : text);
const quoted = (text: string): string => (/[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text);

function cell(value: string | number | null): string {
  if (value === null) return '';
  return typeof value === 'number' ? String(value) : quoted(harmless(value));
}

/** Comma-separated values as RFC 4180 has them: a head, rows that end in CR LF, a decimal point in every figure. */
export function writeCsv({ columns, rows }: CsvTable): string {
  return [columns, ...rows].map((row) => `${row.map(cell).join(',')}\r\n`).join('');
}
