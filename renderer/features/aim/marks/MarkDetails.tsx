import { useId, useRef, useState } from 'react';
import { dayText } from '../../../../core/findings/index.ts';
import type { SightMark } from '../../../../core/model/sightMark.ts';
import { Dialog } from '../../../design/index.ts';
import { now } from '../../../state/clock.ts';
import { useBenchApi, useUnits } from '../../../state/useBench.ts';
import { keepFocus } from '../../frame/keepFocus.ts';
import { correctMark, leaveOutMark, putMarkAway } from './edits.ts';
import { farText } from './words.ts';

const LONGEST = 200;
const MOST_ARROWS = 999;

/** A mark on a page of its own: when it was shot in, by how many arrows, and out of the fit or off the shelf. */
export function MarkDetails({ mark, onClose }: { mark: SightMark; onClose(): void }) {
  const bench = useBenchApi();
  const units = useUnits();
  const [reason, setReason] = useState(mark.leftOut ?? '');
  const [shots, setShots] = useState(mark.shots === null ? '' : String(mark.shots));
  const [wrong, setWrong] = useState<'reason' | 'shots' | null>(null);
  const reasonField = useRef<HTMLInputElement>(null);
  const shotsField = useRef<HTMLInputElement>(null);
  const id = useId();
  const far = farText(mark.distance, units);
  const out = mark.leftOut !== null;

  const keepShots = (): Promise<boolean> | null => {
    const text = shots.trim();
    const count = text === '' ? null : /^\d{1,3}$/.test(text) ? Number(text) : 0;
    if (count === 0) {
      setWrong('shots');
      shotsField.current?.focus();
      return null;
    }
    return count === mark.shots ? Promise.resolve(true) : correctMark(bench, mark, 'Arrows', { shots: count });
  };
  const keep = async (): Promise<void> => {
    if (out && reason.trim() !== mark.leftOut) return leave(reason.trim());
    const kept = keepShots();
    if (kept !== null && (await kept)) onClose();
  };
  const leave = async (why: string | null): Promise<void> => {
    if (why === '') {
      setWrong('reason');
      return reasonField.current?.focus();
    }
    const kept = keepShots();
    if (kept !== null && (await kept) && (await leaveOutMark(bench, mark, why))) onClose();
  };
  const away = async (): Promise<void> => {
    if (!(await putMarkAway(bench, mark, true))) return;
    onClose();
    keepFocus();
  };
  return (
    <Dialog
      title={`The mark for ${far}`}
      onClose={onClose}
      foot={
        <>
          <button type="button" className="btn go" onClick={() => void keep()}>
            Keep
          </button>
          {out ? (
            <button type="button" className="btn" onClick={() => void leave(null)}>
              Count it again
            </button>
          ) : (
            <button type="button" className="btn" onClick={() => void leave(reason.trim())}>
              Leave it out
            </button>
          )}
          <button type="button" className="btn" onClick={() => void away()}>
            Put it away
          </button>
          <button type="button" className="btn" onClick={onClose}>
            Cancel
          </button>
        </>
      }
    >
      <p className="note">
        Shot in {dayText(mark.context.shotAt, now())}. Left out, it stays in the table and is held against the others, which count
        without it. Put away, it is gone from here and can be taken out again.
      </p>
      <div className="row">
        <label htmlFor={`${id}-shots`}>arrows</label>
        <div className="row-value">
          <input
            ref={shotsField}
            id={`${id}-shots`}
            className="figure"
            inputMode="numeric"
            value={shots}
            placeholder="6, not counted"
            autoComplete="off"
            aria-invalid={wrong === 'shots'}
            aria-describedby={wrong === 'shots' ? `${id}-wrong` : undefined}
            onChange={(event) => {
              setShots(event.currentTarget.value);
              setWrong(null);
            }}
            onKeyDown={(event) => {
              if (event.key === 'Enter') void keep();
            }}
          />
          {wrong === 'shots' && (
            <p id={`${id}-wrong`} className="wrong" role="alert">
              The number of arrows that settled the mark was expected, from 1 to {MOST_ARROWS}.
            </p>
          )}
        </div>
      </div>
      <div className="row">
        <label htmlFor={id}>{out ? 'why it is left out' : 'a reason to leave it out'}</label>
        <div className="row-value">
          <input
            ref={reasonField}
            id={id}
            className="words"
            value={reason}
            maxLength={LONGEST}
            autoComplete="off"
            aria-invalid={wrong === 'reason'}
            aria-describedby={wrong === 'reason' ? `${id}-wrong` : undefined}
            onChange={(event) => {
              setReason(event.currentTarget.value);
              setWrong(null);
            }}
          />
          {wrong === 'reason' && (
            <p id={`${id}-wrong`} className="wrong" role="alert">
              A reason was expected, as in “read in a cross wind”. Without one the mark counts.
            </p>
          )}
        </div>
      </div>
    </Dialog>
  );
}
