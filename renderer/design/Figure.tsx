import { FigureNotes } from './FigureNotes.tsx';
import { Fraction } from './Fraction.tsx';
import { useFigure, type FigureProps } from './useFigure.ts';

/** A figure on its dotted rule, in a row of a form: its name on the left, what it means below. */
export function Figure(props: FigureProps) {
  const { name, hint } = props;
  const { id, text, built, wrong, shown, input } = useFigure(props);
  return (
    <div className="row">
      <label htmlFor={id}>{name}</label>
      <div className="row-value">
        <div className="figure-box">
          <input className={built ? 'figure built' : 'figure'} {...input} />
          {built && (
            <span className="figure-shown" aria-hidden="true">
              <Fraction>{text}</Fraction>
            </span>
          )}
        </div>
        <FigureNotes id={id} hint={hint} wrong={wrong} shown={shown} />
      </div>
    </div>
  );
}
