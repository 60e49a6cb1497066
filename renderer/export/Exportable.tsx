import { useRef, type ReactNode, type RefObject } from 'react';
import type { CsvTable } from './csv.ts';
import { ExportLinks } from './ExportLinks.tsx';

interface Props {
  /** What it is, for the file's name and for those who hear the links: "force and draw". */
  of: string;
  /** What is written above the drawing in the file. */
  title: string;
  note: string;
  /** The whole picture in a sentence. */
  sentence: string;
  /** The figures behind it; without them there is no CSV. */
  table?: () => CsvTable;
  /** The drawings, and the fields over them whose text is to go along (`data-export-text`). */
  children: ReactNode;
  /** What else belongs to the drawing and stands to its right in the file: its details. */
  beside?: RefObject<Element | null>;
  /** What stands between the drawing and the links and is not part of the file. */
  beneath?: ReactNode;
}

/** A plot or drawing that can be saved as a file. */
export function Exportable({ children, beneath, ...file }: Props) {
  const figure = useRef<HTMLDivElement>(null);
  return (
    <>
      <div ref={figure}>{children}</div>
      {beneath}
      <ExportLinks figure={figure} {...file} />
    </>
  );
}
