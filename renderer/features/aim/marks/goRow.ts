/** To the field of the same column in the next row that has one: what was typed is kept as the old one is left. */
export function goRow(from: HTMLInputElement, by: 1 | -1): void {
  const place = (field: Element) => field.closest('td, th');
  const column = (cell: Element | null): number => (cell === null ? -1 : [...(cell.parentElement?.children ?? [])].indexOf(cell));
  const fields = [...(from.closest('table')?.querySelectorAll<HTMLInputElement>('tbody input') ?? [])];
  const same = fields.filter((field) => column(place(field)) === column(place(from)));
  same[same.indexOf(from) + by]?.focus();
}
