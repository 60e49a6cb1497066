export { Exportable } from './Exportable.tsx';
export type { CsvTable } from './csv.ts';
