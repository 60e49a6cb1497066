import { useId, useState, type KeyboardEvent } from 'react';
import type { ShotGroup } from '../../../../core/model/group.ts';
import { textQuantity } from '../../../../core/units/index.ts';
import { useBenchApi, useUnits } from '../../../state/useBench.ts';
import { addShot, removeShot } from '../edits.ts';
import { beginEnd } from './beginEnd.ts';
import { setEntry } from './store.ts';
import { isWholePlace, numberedPlace, typedPlace } from './typedPlace.ts';

/** For those who read the places off a rule: "12 −8" and Enter, or "12r 8d" without; "3: 12 −8" numbers the arrow. */
export function TypedShot({ entering }: { entering: ShotGroup }) {
  const units = useUnits();
  const bench = useBenchApi();
  const [text, setText] = useState('');
  const [wrong, setWrong] = useState<string | null>(null);
  const [said, setSaid] = useState('');
  const id = useId();

  const keep = (typed: string) => {
    if (typed.trim() === '') return;
    const { arrow, place: where } = numberedPlace(typed);
    const place = typedPlace(where, units);
    setWrong(place.ok ? null : place.problem.sentence);
    if (!place.ok) return;
    setText('');
    setEntry(entering.id, { shotInHand: null });
    const { x, y } = place.value;
    void addShot(bench, entering.id, { x, y, arrow }).then((done) => {
      const told = (value: number) => textQuantity(value, 'setting', units, { signed: true });
      if (done) setSaid(`Shot set at ${told(x)} across, ${told(y)} up`);
    });
  };
  const onType = (typed: string) => {
    setText(typed);
    if (isWholePlace(numberedPlace(typed).place)) keep(typed);
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key === 'Enter') keep(text);
    else if (event.key === 'Escape') {
      setText('');
      setWrong(null);
    } else if (text === '' && event.key === 'Backspace' && !event.repeat) {
      void removeShot(bench, entering.id, null);
    } else if (text === '' && event.key.toLowerCase() === 'n' && !event.ctrlKey && !event.metaKey && !event.altKey) {
      beginEnd(entering);
    } else return;
    event.preventDefault();
  };

  return (
    <>
      <span className="typed-shot">
        <label htmlFor={id}>
          at<span className="heard">, across and up from the centre, {units.setting}</span>
        </label>
        <input
          id={id}
          className="words"
          value={text}
          placeholder={`12 −8 ${units.setting}`}
          autoComplete="off"
          spellCheck={false}
          data-typed-shot=""
          aria-invalid={wrong !== null}
          aria-describedby={wrong === null ? undefined : `${id}-wrong`}
          onChange={(event) => onType(event.currentTarget.value)}
          onKeyDown={onKeyDown}
        />
        <span className="heard" role="status">
          {said}
        </span>
      </span>
      {wrong !== null && (
        <span id={`${id}-wrong`} className="wrong" role="alert">
          {wrong}
        </span>
      )}
    </>
  );
}
