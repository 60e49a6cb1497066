import type { VirtualMass } from '../../../core/bow/index.ts';
import { arrowMass } from '../../../core/arrow/index.ts';
import { forceDrawOf, heavierWeight, speedByMass, virtualMassOf } from '../../../core/bow/index.ts';
import type { Band } from '../../../core/model/band.ts';
import type { Bundle } from '../../../core/model/bundle.ts';
import type { UnitChoice } from '../../../core/model/preferences.ts';
import { ok, type Result } from '../../../core/model/problem.ts';
import type { SpeedReading } from '../../../core/model/readings.ts';
import { leastMassPerWeight, massPerWeightCheck } from '../../../core/safety/index.ts';

/** The speed of an arrow of a mass, with its band: SI. */
export interface SpeedSample extends Band {
  readonly mass: number;
}

/** What is told of the virtual mass. */
export type Fit = Pick<VirtualMass, 'virtualMass' | 'readings' | 'from' | 'credible' | 'why' | 'cannotSeparate' | 'notes'>;

/** Speed against arrow mass, ready to be drawn. */
export interface SpeedMassData {
  readonly samples: readonly SpeedSample[];
  readonly from: 'chronograph' | 'fitted' | 'estimated';
  /** What the chronograph read: arrows of several masses, and this one. */
  readonly read: readonly SpeedReading[];
  /** This arrow; its speed is null where it is too light to be shot. */
  readonly arrow: { readonly mass: number; readonly speed: Band | null };
  /** The least mass of an arrow on this bow, and where the figure is from; null where there is none. */
  readonly least: { readonly mass: number; readonly from: 'maker' | 'common practice' | 'from memory' } | null;
  /** What the bow stores; null where it cannot be told. */
  readonly stored: number | null;
  /** The fit to the chronograph's readings; null before there are any that could be fitted. */
  readonly fit: Fit | null;
}

const PIECES = 40;

export function speedMassData(bundle: Bundle, units: UnitChoice): Result<SpeedMassData> {
  const { archer, arrowSet, bow, setup } = bundle;
  const mass = arrowMass(arrowSet);
  if (!mass.ok) return mass;
  const arrow = mass.value.mass;
  const speeds = speedByMass(bundle);
  if (!speeds.ok) return speeds;
  const here = speeds.value(arrow);
  if (!here.ok) return here;
  const weight = heavierWeight(bow, archer, setup.settings);
  const limit = leastMassPerWeight(bow);
  const least = limit === null || !weight.ok ? null : { mass: limit.stop * weight.value.value, from: limit.from };
  const tooLight = weight.ok && massPerWeightCheck(bow, arrow, weight.value).level === 'stop';

  const { arrowSpeed: own, speedMass } = setup.settings;
  const read = own === null ? setup.chronograph : [...setup.chronograph, { mass: speedMass ?? arrow, speed: own }];
  const shot = read.map((reading) => reading.mass);
  const low = Math.min(arrow * 0.8, least === null ? arrow * 0.8 : least.mass * 0.85, ...shot.map((one) => one * 0.95));
  const high = Math.max(arrow * 1.35, least === null ? 0 : least.mass * 1.9, ...shot.map((one) => one * 1.05));
  const start = least === null ? low : Math.max(low, least.mass);
  const samples = Array.from({ length: PIECES + 1 }, (_, i) => start + ((high - start) * i) / PIECES).flatMap(
    (one): SpeedSample[] => {
      const speed = speeds.value(one);
      return speed.ok ? [{ mass: one, value: speed.value.value, low: speed.value.low, high: speed.value.high }] : [];
    },
  );
  const curve = forceDrawOf(bundle);
  const fit = virtualMassOf(bundle, units);
  return ok({
    samples,
    from: here.value.from,
    read,
    arrow: { mass: arrow, speed: tooLight ? null : here.value },
    least,
    stored: curve.ok ? curve.value.energy.value : null,
    fit: fit.ok ? fit.value : null,
  });
}

/** Between samples in a straight line; null outside them. */
export function speedAt(samples: readonly SpeedSample[], mass: number): Band | null {
  const after = samples.findIndex((sample) => sample.mass >= mass - 1e-12);
  const [a, b] = [samples[after - 1] ?? samples[after], samples[after]];
  if (a === undefined || b === undefined || (after === 0 && mass < b.mass - 1e-9)) return null;
  const share = a.mass === b.mass ? 0 : (mass - a.mass) / (b.mass - a.mass);
  const between = (end: 'value' | 'low' | 'high') => a[end] + (b[end] - a[end]) * share;
  return { value: between('value'), low: between('low'), high: between('high') };
}
