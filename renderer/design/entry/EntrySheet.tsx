import { useRef, useState, type ReactNode } from 'react';
import { useBench } from '../../state/useBench.ts';
import { Dialog } from '../Dialog.tsx';
import { UnreadContext } from './unread.ts';

interface Props {
  title: string;
  /** "Keep 12 readings": the one filled button. */
  keep: string;
  /** Whether anything was entered that closing would lose. */
  changed: boolean;
  /** Nothing is there yet that could be kept. */
  nothing?: boolean;
  /** Why it cannot be kept as it stands; null when it can. */
  wrong: string | null;
  /** What the notebook holds now of what the sheet will write over: another window may write it while this one is open. */
  held: unknown;
  /** Writes it as one Change; what comes back says whether it is kept. */
  onKeep(): Promise<boolean>;
  onClose(): void;
  /** For tables of many columns. */
  wide?: boolean;
  children: ReactNode;
}

/** A sheet that is kept as a whole or not at all. Esc and Keep ask once before what was typed or pasted is lost; Cancel does not. */
export function EntrySheet({
  title,
  keep,
  changed,
  wrong,
  held,
  onKeep,
  onClose,
  nothing = false,
  wide = false,
  children,
}: Props) {
  /** What a second press will lose: everything, or a table that was pasted and not read. */
  const [asked, setAsked] = useState<'leave' | 'unread' | null>(null);
  const [tried, setTried] = useState(false);
  const [failed, setFailed] = useState(false);
  const [known, setKnown] = useState(() => JSON.stringify(held));
  const [overtaken, setOvertaken] = useState(false);
  /** What stands in a field of the sheet's own, such as a table that was pasted and not yet read. */
  const [typed, setTyped] = useState(false);
  const [unread, setUnread] = useState(false);
  const writing = useRef(false);
  const said = useBench((state) => state.said);
  const leave = () => ((changed || typed) && asked !== 'leave' ? setAsked('leave') : onClose());
  const write = async () => {
    setTried(true);
    setFailed(false);
    setOvertaken(false);
    if (wrong !== null) return;
    if (unread && asked !== 'unread') {
      setAsked('unread');
      return;
    }
    if (JSON.stringify(held) !== known) {
      setKnown(JSON.stringify(held));
      setOvertaken(true);
      return;
    }
    // A second press while the first is on its way would write the same Change again.
    if (writing.current) return;
    writing.current = true;
    const done = await onKeep().finally(() => (writing.current = false));
    setFailed(!done);
    if (done) onClose();
  };
  const refusal = tried && wrong !== null ? wrong : failed && said?.kind === 'refused' ? said.sentence : null;
  const notice = overtaken
    ? `Another window has written here since this sheet was opened. “${keep}” once more puts this in its place; Cancel leaves what that window wrote.`
    : asked === 'leave'
      ? `What was entered here is not kept yet. Esc once more leaves it; “${keep}” keeps it.`
      : asked === 'unread' && unread
        ? `The pasted table is not read yet. “Read it” puts it into the rows; “${keep}” once more leaves it out.`
        : null;
  return (
    <Dialog
      title={title}
      size={wide ? 'wide' : 'tall'}
      onClose={leave}
      foot={
        <>
          <button type="button" className="btn go" disabled={nothing} onClick={() => void write()}>
            {keep}
          </button>
          <button type="button" className="btn" onClick={onClose}>
            Cancel
          </button>
          {refusal !== null && (
            <p className="wrong" role="alert">
              {refusal}
            </p>
          )}
          {refusal === null && notice !== null && (
            <p className="caution-text" role="alert">
              {notice}
            </p>
          )}
        </>
      }
    >
      <div
        className="sheet-scroll"
        onInput={({ target }) => {
          setAsked(null);
          if (isText(target)) setTyped(true);
        }}
      >
        <UnreadContext value={setUnread}>{children}</UnreadContext>
      </div>
    </Dialog>
  );
}

/** A list or a tick alone holds nothing that took time to type. */
const isText = (target: EventTarget): boolean =>
  target instanceof HTMLTextAreaElement || (target instanceof HTMLInputElement && target.type === 'text');
