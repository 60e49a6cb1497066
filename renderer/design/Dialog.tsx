import { useEffect, useId, useRef, type ReactNode } from 'react';
import { createPortal } from 'react-dom';
import { Fraction } from './Fraction.tsx';

interface Props {
  title: string;
  onClose(): void;
  children: ReactNode;
  /** Buttons at the foot; without them there is just "Close". */
  foot?: ReactNode;
  /** For tables: title and buttons stay, what lies between them scrolls; "wide" for many columns. */
  size?: 'tall' | 'wide';
}

/** A sheet over the work. The browser's own <dialog> keeps the focus inside, answers Esc, and gives the focus back. */
export function Dialog({ title, onClose, children, foot, size }: Props) {
  const element = useRef<HTMLDialogElement>(null);
  /** Whether the pointer went down beside the sheet: one that only comes up there was selecting text. */
  const pressedBeside = useRef(false);
  const id = useId();
  useEffect(() => {
    const dialog = element.current;
    const opener = document.activeElement;
    if (dialog !== null && !dialog.open) dialog.showModal();
    return () => {
      dialog?.close();
      // The face is drawn, and takes the focus all the same.
      if ((opener instanceof HTMLElement || opener instanceof SVGElement) && opener.isConnected) opener.focus();
    };
  }, []);
  // Out of the place that opened it: no style of that place may reach in here.
  return createPortal(
    <dialog
      ref={element}
      className={size === undefined ? 'sheet' : `sheet tall ${size}`}
      aria-labelledby={id}
      onCancel={(event) => {
        event.preventDefault();
        onClose();
      }}
      onPointerDown={(event) => {
        pressedBeside.current = event.target === element.current;
      }}
      onClick={(event) => {
        if (event.target === element.current && pressedBeside.current) onClose();
      }}
    >
      <div className="sheet-page">
        <h2 id={id}>
          <Fraction>{title}</Fraction>
        </h2>
        {children}
        <div className="acts">
          {foot ?? (
            <button type="button" className="btn" onClick={onClose}>
              Close
            </button>
          )}
        </div>
      </div>
    </dialog>,
    document.body,
  );
}
