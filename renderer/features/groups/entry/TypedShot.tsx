import { useId, useState, type KeyboardEvent } from 'react';
import type { ShotGroup } from '../../../../core/model/group.ts';
import type { UnitChoice } from '../../../../core/model/preferences.ts';
import { textQuantity } from '../../../../core/units/index.ts';
import { useBenchApi, useUnits } from '../../../state/useBench.ts';
import { addShot, removeShot } from '../edits.ts';
import { beginEnd } from './beginEnd.ts';
import { setEntry } from './store.ts';
import { isWholePlace, numberedPlace, typedPlace } from './typedPlace.ts';

/** How a typed place is read, asked for and told. */
export interface PlaceTyped {
  readonly read: typeof typedPlace;
  readonly asks: (units: UnitChoice) => string;
  readonly example: string;
  readonly told: (place: { readonly x: number; readonly y: number }, units: UnitChoice) => string;
}

const fromCentre: PlaceTyped = {
  read: typedPlace,
  asks: ({ setting }) => `across and up from the centre, ${setting}`,
  example: '12 −8',
  told: ({ x, y }, units) => {
    const signed = (value: number) => textQuantity(value, 'setting', units, { signed: true });
    return `at ${signed(x)} across, ${signed(y)} up`;
  },
};

interface Props {
  entering: ShotGroup;
  place?: PlaceTyped;
}

/** For those who read the places off a rule: "12 −8" and Enter, or "12r 8d" without; "3: 12 −8" numbers the arrow. */
export function TypedShot({ entering, place: typedAs = fromCentre }: Props) {
  const units = useUnits();
  const bench = useBenchApi();
  const [text, setText] = useState('');
  const [wrong, setWrong] = useState<string | null>(null);
  const [said, setSaid] = useState('');
  const id = useId();

  const keep = (typed: string) => {
    if (typed.trim() === '') return;
    const { arrow, place: where } = numberedPlace(typed);
    const place = typedAs.read(where, units);
    setWrong(place.ok ? null : place.problem.sentence);
    if (!place.ok) return;
    setText('');
    setEntry(entering.id, { shotInHand: null });
    const { x, y } = place.value;
    void addShot(bench, entering.id, { x, y, arrow }).then(
      (done) => done && setSaid(`Shot set ${typedAs.told({ x, y }, units)}`),
    );
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
          at<span className="heard">, {typedAs.asks(units)}</span>
        </label>
        <input
          id={id}
          className="words"
          value={text}
          placeholder={`${typedAs.example} ${units.setting}`}
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
