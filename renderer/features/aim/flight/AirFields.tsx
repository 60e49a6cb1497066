import { airOf, airUnsaid, type AirGiven } from '../../../../core/flight/index.ts';
import type { FlightBasis } from '../../../../core/aim/index.ts';
import type { Id } from '../../../../core/model/common.ts';
import type { Measure } from '../../../../core/model/limits.ts';
import type { Result } from '../../../../core/model/problem.ts';
import { readMeasure } from '../../../../core/units/index.ts';
import { Figure } from '../../../design/index.ts';
import { useUnits } from '../../../state/useBench.ts';
import { chooseInAim, useAimChoice } from '../store.ts';
import { airText } from './words.ts';

interface Field {
  readonly key: keyof AirGiven;
  readonly measure: Measure;
  readonly name: string;
}

const fields: readonly Field[] = [
  { key: 'temperature', measure: 'airTemperature', name: 'temperature' },
  { key: 'altitude', measure: 'altitude', name: 'height above the sea' },
  { key: 'pressure', measure: 'airPressure', name: 'or pressure, on the spot' },
  { key: 'humidity', measure: 'humidity', name: 'humidity' },
];

/** What is known of the air; what is not stands in pencil. It is of this session alone: the next day has another. */
export function AirFields({ setupId, basis }: { setupId: Id; basis: FlightBasis }) {
  const units = useUnits();
  const known = useAimChoice(setupId).air ?? airUnsaid;
  const { temperature, pressure, humidity } = basis.airState;
  const pencil: Readonly<Record<keyof AirGiven, number | undefined>> = {
    temperature,
    pressure,
    humidity,
    altitude: known.pressure === null ? 0 : undefined,
  };
  // A pressure that the height cannot have is told at the field that it is typed in, and not kept.
  const read = ({ key, measure }: Field, typed: string): Result<number | null> => {
    const one = readMeasure(measure, typed, units);
    if (!one.ok) return one;
    const air = airOf({ ...known, [key]: one.value }, units);
    return air.ok ? one : air;
  };
  const keep = (key: keyof AirGiven, value: number | null) => {
    const next = { ...known, [key]: value };
    chooseInAim(setupId, { air: Object.values(next).every((figure) => figure === null) ? null : next });
  };
  return (
    <fieldset className="aim-given flight-given flight-air">
      <legend className="heard">The air</legend>
      {fields.map((field) => (
        <Figure
          key={field.key}
          measure={field.measure}
          name={field.name}
          value={known[field.key]}
          assumed={pencil[field.key]}
          read={(typed) => read(field, typed)}
          onKeep={(value) => keep(field.key, value)}
          field={`aim.air.${field.key}`}
        />
      ))}
      <div className="row">
        <span className="aim-name">still air of</span>
        <span className={basis.airGiven ? 'flight-density' : 'flight-density faint'}>{airText(basis)}</span>
      </div>
    </fieldset>
  );
}
