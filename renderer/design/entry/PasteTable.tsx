import { useContext, useEffect, useId, useRef, useState, type ClipboardEvent } from 'react';
import { fileText } from './fileText.ts';
import { UnreadContext } from './unread.ts';

interface Props {
  /** What the lines are expected to hold: "draw, force, and letting down if it was read". */
  holds: string;
  onRead(text: string): void;
}

/** A longer paste is put into the box at once: browsers set thousands of lines one after another, and take minutes over it [characters]. */
const LONG = 10_000;

/** A whole table at once: pasted into a box, or out of a file that never leaves this computer. */
export function PasteTable({ holds, onRead }: Props) {
  const [open, setOpen] = useState(false);
  const [text, setText] = useState('');
  const [wrong, setWrong] = useState<string | null>(null);
  const file = useRef<HTMLInputElement>(null);
  const id = useId();
  const tell = useContext(UnreadContext);
  const unread = text.trim() !== '';
  useEffect(() => {
    tell(unread);
    return () => tell(false);
  }, [tell, unread]);
  const choose = async (chosen: File | undefined) => {
    if (chosen === undefined) return;
    const read = await fileText(chosen);
    setWrong(read.ok ? null : read.problem.sentence);
    if (read.ok) onRead(read.value);
    if (file.current !== null) file.current.value = '';
  };
  const onPaste = (event: ClipboardEvent<HTMLTextAreaElement>) => {
    const pasted = event.clipboardData.getData('text/plain');
    if (pasted.length < LONG) return;
    event.preventDefault();
    const { selectionStart, selectionEnd, value } = event.currentTarget;
    setText(value.slice(0, selectionStart) + pasted + value.slice(selectionEnd));
  };
  return (
    <div className="entry-paste">
      <div className="acts">
        <button type="button" className="btn" aria-expanded={open} onClick={() => setOpen(!open)}>
          Paste a table
        </button>
        <button type="button" className="btn" onClick={() => file.current?.click()}>
          Read a CSV file
        </button>
        <input
          ref={file}
          type="file"
          hidden
          aria-label="CSV file"
          accept=".csv,.tsv,.txt,text/csv,text/plain"
          onChange={(event) => void choose(event.currentTarget.files?.[0])}
        />
      </div>
      {open && (
        <>
          <label htmlFor={id}>table: {holds}</label>
          <textarea
            id={id}
            rows={5}
            value={text}
            spellCheck={false}
            // It was asked for just now.
            autoFocus
            onChange={(event) => setText(event.currentTarget.value)}
            onPaste={onPaste}
          />
          <button
            type="button"
            className="btn"
            onClick={() => {
              onRead(text);
              setText('');
              setOpen(false);
            }}
          >
            Read it
          </button>
        </>
      )}
      {wrong !== null && (
        <p className="wrong" role="alert">
          {wrong}
        </p>
      )}
    </div>
  );
}
