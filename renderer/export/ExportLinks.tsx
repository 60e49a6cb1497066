import { useState, type RefObject } from 'react';
import { fileName, type FileKind, type FileToSave } from '../../core/files.ts';
import { useBench, useBenchApi, useBundle } from '../state/useBench.ts';
import { writeCsv, type CsvTable } from './csv.ts';
import { svgPage } from './page.ts';
import { pngOf } from './picture.ts';
import { readFigure } from './readFigure.ts';
import { writeXml, xml } from './xml.ts';
import './export.css';

type Read = ReturnType<typeof readFigure>;

interface Props {
  /** The element that holds the drawing, with the fields over it. */
  figure: RefObject<Element | null>;
  of: string;
  title: string;
  note: string;
  sentence: string;
  table?: () => CsvTable;
  /** What else goes into the file, to the right of the drawing. */
  beside?: RefObject<Element | null>;
}

/** Between a drawing and what stands beside it in the file [px]. */
const APART = 28;

function sideBySide(main: Read, other: Element | null): Read {
  if (other === null) return main;
  const { width, height, content } = readFigure(other);
  const x = main.width + APART;
  return {
    width: x + width,
    height: Math.max(main.height, height),
    content: [...main.content, xml('g', { transform: `translate(${x} 0)` }, content)],
  };
}

/** Under a plot or a drawing: it as a file, on white and in printing ink whatever the theme. */
export function ExportLinks({ figure, of, title, note, sentence, table, beside }: Props) {
  const bench = useBenchApi();
  const setupName = useBundle()?.setup.name ?? '';
  const reading = useBench((state) => state.book) === 'demo' ? 'demo' : '';
  const [failed, setFailed] = useState<string | null>(null);

  const fileOf = async (kind: FileKind): Promise<FileToSave | null> => {
    const name = fileName([reading, setupName, of], kind);
    if (kind === 'csv') return table === undefined ? null : { name, kind, data: writeCsv(table()) };
    const { current } = figure;
    if (current === null) return null;
    const page = svgPage({ title, note, sentence, ...sideBySide(readFigure(current), beside?.current ?? null) });
    if (kind === 'png') return { name, kind, data: await pngOf(page) };
    return { name, kind, data: `<?xml version="1.0" encoding="UTF-8"?>\n${writeXml(page)}\n` };
  };
  const save = async (kind: FileKind) => {
    setFailed(null);
    try {
      const file = await fileOf(kind);
      if (file !== null) await bench.getState().save(file);
    } catch (error) {
      setFailed(`This could not be made into a file: ${error instanceof Error ? error.message : String(error)}.`);
    }
  };
  const kinds: readonly FileKind[] = table === undefined ? ['svg', 'png'] : ['svg', 'png', 'csv'];
  return (
    <p className="export-links" data-export="no">
      <span aria-hidden="true">Save as </span>
      {kinds.map((kind, i) => (
        <span key={kind}>
          {i > 0 && ' · '}
          <button type="button" className="link" onClick={() => void save(kind)}>
            <span className="heard">Save {of} as </span>
            {kind.toUpperCase()}
          </button>
        </span>
      ))}
      {failed !== null && (
        <span className="wrong" role="alert">
          {' '}
          {failed}
        </span>
      )}
    </p>
  );
}
