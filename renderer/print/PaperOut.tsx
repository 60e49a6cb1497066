import { createPortal } from 'react-dom';
import { Drawn } from './Drawn.tsx';
import type { PageName } from './pages.ts';
import type { Sheet } from './sheet.ts';
import './print.css';

/** What comes out of the printer while it is there, and nothing else of the page: never seen on the screen. */
export function PaperOut({ sheet, page }: { sheet: Sheet; page: PageName }) {
  return createPortal(
    <div className={`paper-out ${page}`}>
      <Drawn node={sheet.svg} />
    </div>,
    document.body,
  );
}
