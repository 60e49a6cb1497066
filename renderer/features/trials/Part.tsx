import { useEffect, useId, useRef, type ReactNode } from 'react';
import type { Id } from '../../../core/model/common.ts';
import { Fraction } from '../../design/index.ts';
import { standIn, type PartName } from './store.ts';

interface Props {
  trialId: Id;
  name: PartName;
  number: number;
  title: string;
  /** What is said of it while it is shut. */
  line: string;
  open: boolean;
  children: ReactNode;
}

/** A numbered part of the page. Its head is the button that opens it and shuts the others. */
export function Part({ trialId, name, number, title, line, open, children }: Props) {
  const id = useId();
  const head = useRef<HTMLButtonElement>(null);
  const was = useRef(open);
  useEffect(() => {
    // A part that was opened is read from its head on.
    if (open && !was.current) {
      head.current?.scrollIntoView({ block: 'nearest' });
      // What led here may be gone with the part that was shut.
      if (document.activeElement === document.body) head.current?.focus({ preventScroll: true });
    }
    was.current = open;
  }, [open]);
  return (
    <section className={open ? 'part open' : 'part'} aria-labelledby={id}>
      <h2>
        <button
          ref={head}
          type="button"
          aria-expanded={open}
          data-part={name}
          onClick={() => !open && standIn(trialId, { part: name })}
        >
          <span className="steps-number" aria-hidden="true">
            {number}
          </span>
          <span id={id} className="part-title">
            {title}
          </span>
          {!open && (
            <span className="part-line">
              <Fraction>{line}</Fraction>
            </span>
          )}
        </button>
      </h2>
      {open && <div className="part-body">{children}</div>}
    </section>
  );
}
