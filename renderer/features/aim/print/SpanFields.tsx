import { Choice, Figure } from '../../../design/index.ts';
import { factorOf } from '../../../../core/units/index.ts';
import { useUnits } from '../../../state/useBench.ts';
import type { Span } from './makers.ts';

const steps = [1, 2, 5, 10, 20] as const;

/** Which distances a paper shows. */
export function SpanFields({ span, onChoose }: { span: Span; onChoose(span: Span): void }) {
  const units = useUnits();
  const factor = factorOf('distance', units);
  const near = steps.reduce((best, step) =>
    Math.abs(step * factor - span.step) < Math.abs(best * factor - span.step) ? step : best,
  );
  return (
    <>
      <Figure
        measure="shootingDistance"
        name="from"
        value={span.from}
        required
        onKeep={(from) => from !== null && onChoose({ ...span, from })}
        field="print.from"
      />
      <Figure
        measure="shootingDistance"
        name="to"
        value={span.to}
        required
        onKeep={(to) => to !== null && onChoose({ ...span, to })}
        field="print.to"
      />
      <Choice
        name="every"
        value={String(near)}
        options={steps.map((step) => ({ value: String(step), text: `${step} ${units.distance}` }))}
        onKeep={(step) => onChoose({ ...span, step: Number(step) * factor })}
        field="print.step"
      />
    </>
  );
}
