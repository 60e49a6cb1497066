import { useId, useState } from 'react';
import { limits } from '../../../core/model/limits.ts';
import type { Tear } from '../../../core/model/trial.ts';
import { textQuantity } from '../../../core/units/index.ts';
import { useUnits } from '../../state/useBench.ts';
import { isWholePlace, typedPlace } from '../groups/entry/typedPlace.ts';

/** For those who measure a tear with a rule: "3 12" and Enter, or "3r 12u" without. */
export function TypedTear({ onKeep }: { onKeep(tear: Pick<Tear, 'across' | 'up'>): void }) {
  const units = useUnits();
  const [text, setText] = useState('');
  const [wrong, setWrong] = useState<string | null>(null);
  const id = useId();
  const keep = (typed: string) => {
    if (typed.trim() === '') return;
    const place = typedPlace(typed, units);
    if (!place.ok) return setWrong(place.problem.sentence.replace('from the centre', 'from the hole of the point'));
    const { x, y } = place.value;
    const most = limits.tear.max;
    if (Math.max(Math.abs(x), Math.abs(y)) > most)
      return setWrong(`A tear of at most ${textQuantity(most, 'setting', units)} was expected.`);
    setWrong(null);
    setText('');
    onKeep({ across: x, up: y });
  };
  return (
    <div className="face-tools">
      <span className="typed-shot">
        <label htmlFor={id}>
          right and up<span className="heard">, from the hole of the point to that of the nock, {units.setting}</span>
        </label>
        <input
          id={id}
          className="words"
          value={text}
          placeholder={`3 12 ${units.setting}`}
          autoComplete="off"
          spellCheck={false}
          data-typed-shot=""
          aria-invalid={wrong !== null}
          aria-describedby={wrong === null ? undefined : `${id}-wrong`}
          onChange={({ currentTarget: { value } }) => {
            setText(value);
            if (isWholePlace(value)) keep(value);
          }}
          onKeyDown={(event) => {
            if (event.key === 'Enter') keep(text);
            else if (event.key === 'Escape') {
              setText('');
              setWrong(null);
            } else return;
            event.preventDefault();
          }}
        />
        {wrong !== null && (
          <span id={`${id}-wrong`} className="wrong" role="alert">
            {wrong}
          </span>
        )}
      </span>
    </div>
  );
}
