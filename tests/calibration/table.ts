import type { Row } from './row.ts';

const decimals = (value: number, places: number): string => value.toFixed(places).replace(/^(-?)0\./, '$1.');
const shown = (value: number): string => decimals(value, 3);

const boundText = ({ bound }: Row): string =>
  bound === null ? '' : bound[0] === 0 ? `at most ${decimals(bound[1], 2)}` : `${shown(bound[0])} to ${shown(bound[1])}`;
const verdict = ({ holds }: Row): string => (holds === null ? '' : holds ? 'yes' : '**no**');

function table(rows: readonly (readonly string[])[]): string[] {
  const widths = (rows[0] ?? []).map((_, i) => Math.max(...rows.map((row) => (row[i] ?? '').length)));
  const line = (row: readonly string[]): string => `| ${row.map((cell, i) => cell.padEnd(widths[i] ?? 0)).join(' | ')} |`;
  const [head = [], ...body] = rows;
  return [line(head), `| ${widths.map((width) => '-'.repeat(width)).join(' | ')} |`, ...body.map(line)];
}

/** The rows by section, each a table that Prettier leaves as it is. */
export function tableOf(rows: readonly Row[]): string {
  const sections = new Map<string, Row[]>();
  for (const row of rows) {
    const section = row.name.startsWith('Worst of') ? 'The worst' : row.name.slice(0, row.name.indexOf(': '));
    sections.set(section, [...(sections.get(section) ?? []), row]);
  }
  return [...sections]
    .map(([section, found]) => {
      const caseOf = ({ name }: Row): string =>
        section === 'The worst' ? name.slice('Worst of '.length) : name.slice(section.length + 2);
      const cells = found.map((row) => [
        caseOf(row),
        shown(row.value),
        decimals(row.standardError, 4),
        String(row.n),
        boundText(row),
        verdict(row),
      ]);
      return [`**${section}**`, '', ...table([['case', 'value', 's.e.', 'draws', 'bound', 'holds'], ...cells])].join('\n');
    })
    .join('\n\n');
}

const BEGIN = '<!-- calibration: begin -->';
const END = '<!-- calibration: end -->';

/** The page with what stands between the markers put anew. */
export function renewed(page: string, text: string): string {
  const [begin, end] = [page.indexOf(BEGIN), page.indexOf(END)];
  if (begin < 0 || end < begin) throw new Error(`The page has no place between ${BEGIN} and ${END}.`);
  return `${page.slice(0, begin + BEGIN.length)}\n\n${text}\n\n${page.slice(end)}`;
}
