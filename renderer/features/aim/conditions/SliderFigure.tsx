import { limits } from '../../../../core/model/limits.ts';
import { factorOf } from '../../../../core/units/index.ts';
import { FigureNotes } from '../../../design/FigureNotes.tsx';
import { useFigure, type FigureProps } from '../../../design/useFigure.ts';
import { useUnits } from '../../../state/useBench.ts';

interface Props extends Omit<FigureProps, 'value' | 'onKeep'> {
  value: number;
  /** The ends of the slider, SI: the figure beside it takes more. */
  from: number;
  to: number;
  /** In the shown unit. */
  step: number;
  onKeep(value: number): unknown;
  /** What an emptied field means; left out, it may not be emptied. */
  blank?: number;
}

/** A figure with the system's own slider beside it: drawn along for a look, typed for the exact one. */
export function SliderFigure({ from, to, step, onKeep, blank, ...props }: Props) {
  const units = useUnits();
  const { measure, name, hint, value } = props;
  const keep = (typed: number | null) => {
    const kept = typed ?? blank;
    return kept !== undefined && onKeep(kept);
  };
  const figure = useFigure({ ...props, required: blank === undefined, onKeep: keep });
  const per = factorOf(limits[measure].use, units);
  const inSteps = (si: number) => Math.round(si / per / step) * step;
  return (
    <div className="cond-set">
      <div className="cond-set-row">
        <label htmlFor={figure.id}>{name}</label>
        <input
          type="range"
          className="cond-slider"
          aria-label={`${name}, by slider`}
          aria-valuetext={figure.shown}
          min={inSteps(from)}
          max={inSteps(to)}
          step={step}
          value={inSteps(value)}
          onChange={(event) => onKeep(event.currentTarget.valueAsNumber * per)}
        />
        <input className="figure" {...figure.input} />
      </div>
      <FigureNotes id={figure.id} hint={hint} wrong={figure.wrong} shown={figure.shown} />
    </div>
  );
}
