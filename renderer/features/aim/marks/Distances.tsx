import type { Id } from '../../../../core/model/common.ts';
import type { UnitChoice } from '../../../../core/model/preferences.ts';
import { factorOf } from '../../../../core/units/index.ts';
import { Choice, Figure } from '../../../design/index.ts';
import { useUnits } from '../../../state/useBench.ts';
import { setDesk, useDesk, type Span } from './store.ts';

const steps = ['1', '2', '5', '10', '15', '20'] as const;
type Step = (typeof steps)[number] | 'usual';

const first = (units: UnitChoice, step: number): Span => {
  const factor = factorOf('distance', units);
  return { from: 10 * factor, to: 70 * factor, step: step * factor };
};

/** Which distances the table and the strip have: the usual ones, or from one to another in steps. The known ones are always there. */
export function Distances({ setupId }: { setupId: Id }) {
  const units = useUnits();
  const { span } = useDesk(setupId);
  const factor = factorOf('distance', units);
  const { distance: unit } = units;
  const step = span === null ? 'usual' : (steps.find((one) => Math.abs(Number(one) * factor - span.step) < 1e-6) ?? 'usual');
  const choose = (next: Step) =>
    setDesk(setupId, { span: next === 'usual' ? null : { ...(span ?? first(units, 10)), step: Number(next) * factor } });
  return (
    <div className="marks-distances">
      <Choice<Step>
        name="distances"
        value={step}
        options={[
          { value: 'usual', text: 'the usual ones' },
          ...steps.map((one) => ({ value: one, text: `every ${one} ${unit}` })),
        ]}
        onKeep={choose}
        field="marks.step"
      />
      {span !== null && (
        <>
          <Figure
            measure="shootingDistance"
            name="from"
            value={span.from}
            required
            onKeep={(from) => from !== null && setDesk(setupId, { span: ordered({ ...span, from }) })}
            field="marks.from"
          />
          <Figure
            measure="shootingDistance"
            name="to"
            value={span.to}
            required
            onKeep={(to) => to !== null && setDesk(setupId, { span: ordered({ ...span, to }) })}
            field="marks.to"
          />
        </>
      )}
    </div>
  );
}

const ordered = ({ from, to, step }: Span): Span => ({ from: Math.min(from, to), to: Math.max(from, to), step });
