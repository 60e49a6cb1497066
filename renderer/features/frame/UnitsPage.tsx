import type { Preferences, UnitChoice } from '../../../core/model/preferences.ts';
import { Choice, Dialog, plain } from '../../design/index.ts';
import { useBench, useBenchApi } from '../../state/useBench.ts';

/** "in, lb, gr; metres at the range": what the bar says of the choice. */
export function unitsText(units: UnitChoice): string {
  return `${units.length}, ${units.weight}, ${units.mass}; ${units.distance === 'm' ? 'metres' : 'yards'} at the range`;
}

/** The unit each kind of figure is shown in, and light or dark. Any unit may be typed anywhere, whatever is chosen here. */
export function UnitsPage({ onClose }: { onClose(): void }) {
  const preferences = useBench((state) => state.preferences);
  const bench = useBenchApi();
  const prefer = (patch: Partial<Preferences>) => void bench.getState().prefer({ ...preferences, ...patch });
  const unit = <K extends keyof UnitChoice>(key: K, value: UnitChoice[K]) =>
    prefer({ units: { ...preferences.units, [key]: value } });
  const { units, theme } = preferences;
  return (
    <Dialog title="Units and light" onClose={onClose}>
      <p className="note">Any unit may be typed after a number, whatever is shown: 28 1/4 in, 71.8 cm, 38 lb, 20 g, 60 yd.</p>
      <Choice
        name="bow and arrow lengths"
        value={units.length}
        options={plain('in', 'cm', 'mm')}
        onKeep={(v) => unit('length', v)}
      />
      <Choice name="small settings" value={units.setting} options={plain('mm', 'cm', 'in')} onKeep={(v) => unit('setting', v)} />
      <Choice name="draw weight" value={units.weight} options={plain('lb', 'kg', 'N')} onKeep={(v) => unit('weight', v)} />
      <Choice name="masses" value={units.mass} options={plain('gr', 'g')} onKeep={(v) => unit('mass', v)} />
      <Choice
        name="spine deflection"
        value={units.deflection}
        options={plain('in', 'mm')}
        onKeep={(v) => unit('deflection', v)}
      />
      <Choice name="distances" value={units.distance} options={plain('m', 'yd')} onKeep={(v) => unit('distance', v)} />
      <Choice name="arrow speed" value={units.speed} options={plain('ft/s', 'm/s')} onKeep={(v) => unit('speed', v)} />
      <Choice
        name="light"
        value={theme}
        options={[
          { value: 'system', text: 'as the computer' },
          { value: 'light', text: 'light' },
          { value: 'dark', text: 'dark' },
        ]}
        onKeep={(value) => prefer({ theme: value })}
      />
    </Dialog>
  );
}
