export { ExportLinks } from './ExportLinks.tsx';
export type { CsvTable } from './csv.ts';
