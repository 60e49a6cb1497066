import './dimension.css';
import { FigureNotes, Fraction, Mark, useFigure, type FigureProps } from '../../design/index.ts';
import type { Box } from '../../plots/boxes.ts';

interface Props extends FigureProps {
  /** Where it stands on the drawing [px]. */
  box: Box;
  anchor: 'start' | 'middle' | 'end';
  /** Its name as it is written under it, line by line; together they are its name. */
  lines?: readonly string[];
  /** A word on what is measured, under its name and not part of it. */
  note?: string | undefined;
  /** Set when a finding calls for attention: the figure takes the level's colour, beside its mark in the findings. */
  level?: 'caution' | 'stop' | undefined;
}

/** A figure on a dimension line: the same field as in a form, laid on the drawing, with its name in italic under it. */
export function DimensionFigure({ box, anchor, lines, note, level, ...figure }: Props) {
  const { id, text, built, pencil, wrong, shown, input } = useFigure(figure);
  const place = { left: box.left, top: box.top, width: box.right - box.left };
  return (
    <div className={`on-drawing ${anchor}${level === undefined ? '' : ` ${level}`}`} style={place}>
      <div className="figure-box">
        <input className={built ? 'figure built' : 'figure'} {...input} />
        {/* The field is as wide as what it says: its rule ends where the figure does. */}
        <span className={text === '' ? 'figure-shown pencilled' : 'figure-shown'} aria-hidden="true" data-export-text="">
          <Fraction>{text === '' ? pencil : text}</Fraction>
        </span>
        {level !== undefined && <Mark level={level} />}
      </div>
      <label htmlFor={id}>
        {(lines ?? [figure.name]).map((line, index) => (
          <span key={line} data-export-text="">
            {index > 0 && ' '}
            {line}
          </span>
        ))}
      </label>
      {note !== undefined && (
        <p className="note" data-export-text="">
          {note}
        </p>
      )}
      <FigureNotes id={id} hint={figure.hint} wrong={wrong} shown={shown} />
    </div>
  );
}
