import { useId, useState } from 'react';
import type { ShotGroup } from '../../../core/model/group.ts';
import { acrossText } from '../../../core/trials/index.ts';
import { useBenchApi, useUnits } from '../../state/useBench.ts';
import { addShot } from '../groups/edits.ts';
import { setEntry } from '../groups/entry/store.ts';
import { acrossPlace } from './acrossPlace.ts';

/** For those who measure from the plumb line with a rule: one figure and Enter. */
export function TypedAcross({ entering }: { entering: ShotGroup }) {
  const units = useUnits();
  const bench = useBenchApi();
  const [text, setText] = useState('');
  const [wrong, setWrong] = useState<string | null>(null);
  const [said, setSaid] = useState('');
  const id = useId();
  const keep = () => {
    if (text.trim() === '') return;
    const place = acrossPlace(text, units);
    setWrong(place.ok ? null : place.problem.sentence);
    if (!place.ok) return;
    setText('');
    setEntry(entering.id, { shotInHand: null });
    const { x } = place.value;
    void addShot(bench, entering.id, place.value).then(
      (done) => done && setSaid(`Shot set ${acrossText(x, units)} ${x < 0 ? 'left' : 'right'} of the plumb line`),
    );
  };
  return (
    <>
      <span className="typed-shot">
        <label htmlFor={id}>
          at<span className="heard">, across and up from the centre, {units.setting}; across alone will do</span>
        </label>
        <input
          id={id}
          className="words"
          value={text}
          placeholder={`15r, 12l ${units.setting}`}
          autoComplete="off"
          spellCheck={false}
          data-typed-shot=""
          aria-invalid={wrong !== null}
          aria-describedby={wrong === null ? undefined : `${id}-wrong`}
          onChange={(event) => setText(event.currentTarget.value)}
          onKeyDown={(event) => {
            if (event.key === 'Enter') keep();
            else if (event.key === 'Escape') {
              setText('');
              setWrong(null);
            } else return;
            event.preventDefault();
          }}
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
