export { Exportable } from './Exportable.tsx';
export { inFigures, type CsvTable } from './csv.ts';
