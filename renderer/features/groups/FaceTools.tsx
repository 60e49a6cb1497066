import { useId, useState } from 'react';
import { limits } from '../../../core/model/limits.ts';
import { parseQuantity, textQuantity } from '../../../core/units/index.ts';
import type { Bundle } from '../../../core/model/bundle.ts';
import type { ShotGroup } from '../../../core/model/group.ts';
import { useBenchApi, useUnits } from '../../state/useBench.ts';
import type { OneGroup } from './derive.ts';
import { addShot, takeBack } from './edits.ts';
import { turnTo } from './store.ts';

interface Props {
  bundle: Bundle;
  first: OneGroup;
  second: OneGroup | null;
  entering: ShotGroup;
  whole: boolean;
}

/** Above the face: which group takes the next shot, how much of the face is seen, and a field for those who read the places off a rule. */
export function FaceTools({ bundle, first, second, entering, whole }: Props) {
  const bench = useBenchApi();
  const name = (one: OneGroup, place: string) =>
    second !== null && first.group.fletching === second.group.fletching ? place : one.group.fletching;
  return (
    <div className="face-tools">
      <fieldset>
        <legend>shots go to</legend>
        {[first, ...(second === null ? [] : [second])].map((one, i) => (
          <label key={one.group.id}>
            <input
              type="radio"
              name="entering"
              checked={one.group.id === entering.id}
              onChange={() => turnTo(bundle.setup.id, { enteringId: one.group.id })}
            />
            {name(one, i === 0 ? 'first' : 'second')}
          </label>
        ))}
      </fieldset>
      <TypedShot entering={entering} />
      <button type="button" className="link" onClick={() => turnTo(bundle.setup.id, { whole: !whole })}>
        {whole ? 'Close in' : 'Whole face'}
      </button>
      <button
        type="button"
        className="link"
        disabled={entering.shots.length === 0}
        onClick={() => void takeBack(bench, entering.id, null)}
      >
        Take back
      </button>
    </div>
  );
}

/** "12 -8" and Enter: across and up. */
function TypedShot({ entering }: { entering: ShotGroup }) {
  const units = useUnits();
  const bench = useBenchApi();
  const [text, setText] = useState('');
  const [wrong, setWrong] = useState<string | null>(null);
  const id = useId();

  const keep = () => {
    const parts = text.trim().split(/\s*;\s*|\s+/);
    if (text.trim() === '') return;
    const [across, up, more] = parts.map((part) => parseQuantity(part, 'setting', units));
    if (across === undefined || up === undefined || more !== undefined) {
      setWrong(`Two figures with a space between were expected, across and up from the centre, as in 12 −8 (${units.setting}).`);
      return;
    }
    if (!across.ok || !up.ok) {
      setWrong([across, up].flatMap((one) => (one.ok ? [] : [one.problem.sentence]))[0] ?? '');
      return;
    }
    if (Math.max(Math.abs(across.value), Math.abs(up.value)) > limits.shotOffset.max) {
      setWrong(`A shot within ${textQuantity(limits.shotOffset.max, 'setting', units)} of the centre was expected.`);
      return;
    }
    setWrong(null);
    setText('');
    void addShot(bench, entering.id, { x: across.value, y: up.value });
  };

  return (
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
        aria-invalid={wrong !== null}
        aria-describedby={wrong === null ? undefined : `${id}-wrong`}
        onChange={(event) => setText(event.currentTarget.value)}
        onKeyDown={(event) => {
          if (event.key === 'Enter') keep();
          if (event.key === 'Escape') {
            setText('');
            setWrong(null);
          }
        }}
      />
      {wrong !== null && (
        <span id={`${id}-wrong`} className="wrong" role="alert">
          {wrong}
        </span>
      )}
    </span>
  );
}
