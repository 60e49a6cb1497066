const figureOf = (line: string): number | null => {
  const text = line
    .trim()
    .replace(/\s*(gr|g)$/u, '')
    .replace(',', '.');
  return /^\d+(\.\d+)?$/u.test(text) ? Number(text) : null;
};

/**
 * Whether a column pasted among the arrows' numbers is a column of masses: part of a grain, three figures, or the same figure twice.
 * The number is the table's first column, so that is where a column off the scale is put by whoever does not look.
 */
export function looksLikeMasses(text: string): boolean {
  const lines = text.trim().split(/\r\n|\r|\n/u);
  if (lines.length < 2 || lines.some((line) => /[\t;]/u.test(line))) return false;
  const figures = lines.flatMap((line) => figureOf(line) ?? []);
  if (figures.length < 2) return false;
  return figures.some((one) => !Number.isInteger(one) || one >= 100) || new Set(figures).size < figures.length;
}
