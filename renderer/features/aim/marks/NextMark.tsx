import { useId, useRef, useState, type FocusEvent, type KeyboardEvent } from 'react';
import type { Id } from '../../../../core/model/common.ts';
import type { UnitChoice } from '../../../../core/model/preferences.ts';
import { readMeasure } from '../../../../core/units/index.ts';
import { useBenchApi, useUnits } from '../../../state/useBench.ts';
import { addMark } from './edits.ts';
import type { MarksView } from './derive.ts';
import { goRow } from './goRow.ts';
import { setDesk, typedAgain, useDesk } from './store.ts';
import { expectedText } from './words.ts';

interface Wrong {
  readonly field: 'distance' | 'reading';
  readonly sentence: string;
}

/** What Enter waits for; and once a distance stands there what the sight should read. */
function howText(view: MarksView, typed: string, asks: Wrong['field'] | null, units: UnitChoice): string {
  if (asks === 'distance') return 'And for which distance?';
  if (asks === 'reading') return `And what does the sight read there?${expected(view, typed, units)}`;
  return `Enter keeps the two.${expected(view, typed, units)}`;
}

function expected(view: MarksView, typed: string, units: UnitChoice): string {
  const read = readMeasure('shootingDistance', typed, units);
  const text = read.ok && read.value !== null ? expectedText(view, read.value) : null;
  return text === null ? '' : ` Expected: ${text}.`;
}

/** Where the next mark is typed: a distance and what the sight reads there. Enter or Tab keeps the two; what cannot be kept stays. */
export function NextMark({ setupId, view }: { setupId: Id; view: MarksView }) {
  const bench = useBenchApi();
  const units = useUnits();
  const desk = useDesk(setupId);
  const [wrong, setWrong] = useState<Wrong | null>(null);
  /** What is asked for after Enter with one half typed. */
  const [asks, setAsks] = useState<Wrong['field'] | null>(null);
  const first = view.rows.length === 0;
  const distanceField = useRef<HTMLInputElement>(null);
  const readingField = useRef<HTMLInputElement>(null);
  const id = useId();

  /** Whether both were kept. */
  const keep = (): boolean => {
    const read = {
      distance: readMeasure('shootingDistance', desk.distance, units),
      reading: readMeasure('sightReading', desk.reading, units),
    };
    for (const field of ['distance', 'reading'] as const) {
      const one = read[field];
      if (one.ok) continue;
      setWrong({ field, sentence: one.problem.sentence });
      return false;
    }
    const [distance, reading] = [read.distance, read.reading].map((one) => (one.ok ? one.value : null));
    if (distance == null || reading == null) return false;
    setWrong(null);
    setDesk(setupId, { distance: '', reading: '' });
    void addMark(bench, setupId, distance, reading, desk.distance).then((kept) => {
      if (!kept) setDesk(setupId, typedAgain(desk));
    });
    return true;
  };
  const onKeyDown = (event: KeyboardEvent<HTMLInputElement>, field: 'distance' | 'reading') => {
    if (event.key === 'Escape' && (desk[field] !== '' || wrong !== null)) {
      event.preventDefault();
      event.stopPropagation();
      setDesk(setupId, { [field]: '' });
      setWrong(null);
      return;
    }
    const typed = desk.distance.trim() !== '' && desk.reading.trim() !== '';
    if (event.key === 'Enter' && !typed) {
      event.preventDefault();
      const blank = desk.distance.trim() === '' ? 'distance' : 'reading';
      setAsks(desk.distance.trim() === desk.reading.trim() ? null : blank);
      (blank === 'distance' ? distanceField : readingField).current?.focus();
    } else if (event.key === 'ArrowDown') {
      event.preventDefault();
      goRow(event.currentTarget, 1);
    } else if ((event.key === 'Enter' || (event.key === 'Tab' && !event.shiftKey && field === 'reading')) && typed) {
      event.preventDefault();
      if (keep()) distanceField.current?.focus();
    }
  };
  /** Who leaves with both typed means them to be kept. */
  const onBlur = (event: FocusEvent) => {
    const inside = event.relatedTarget === distanceField.current || event.relatedTarget === readingField.current;
    if (!inside && desk.distance.trim() !== '' && desk.reading.trim() !== '') keep();
  };
  const input = (field: 'distance' | 'reading', name: string, pencil: string) => (
    <input
      ref={field === 'distance' ? distanceField : readingField}
      className="figure"
      aria-label={name}
      data-field={`marks.next.${field}`}
      value={desk[field]}
      placeholder={pencil}
      autoComplete="off"
      spellCheck={false}
      aria-invalid={wrong?.field === field}
      aria-describedby={wrong?.field === field ? `${id}-wrong` : undefined}
      onChange={(event) => {
        setWrong(null);
        setAsks(null);
        setDesk(setupId, { [field]: event.currentTarget.value });
      }}
      onKeyDown={(event) => onKeyDown(event, field)}
      onBlur={onBlur}
    />
  );
  return (
    <>
      <tr className="marks-next">
        <td>
          {input('distance', 'Distance of the next mark', first ? `e.g. ${units.distance === 'm' ? '18 m' : '20 yd'}` : 'next')}
        </td>
        <td>{input('reading', 'What the sight reads there', first ? 'e.g. 38.5' : 'reading')}</td>
        <td colSpan={6} className="marks-how">
          <span role="status">{wrong === null && howText(view, desk.distance, asks, units)}</span>
        </td>
      </tr>
      {wrong !== null && (
        <tr className="marks-wrong">
          <td colSpan={8}>
            <p id={`${id}-wrong`} className="wrong" role="alert">
              {wrong.sentence} Nothing is kept yet.
            </p>
          </td>
        </tr>
      )}
    </>
  );
}
