import { limits, type Measure } from '../../../core/model/limits.ts';
import { textQuantity } from '../../../core/units/index.ts';
import { useUnits } from '../../state/useBench.ts';
import { listText, readList } from './figureList.ts';
import { PlanField } from './PlanField.tsx';

interface Props {
  name: string;
  measure: Measure;
  /** SI. */
  values: readonly number[];
  most: number;
  onKeep(values: number[]): unknown;
}

/** Several figures of one kind in one field: "10, 18 m". */
export function ListField({ name, measure, values, most, onKeep }: Props) {
  const units = useUnits();
  const show = (list: readonly number[]) => listText(list, measure, units);
  return (
    <PlanField<readonly number[]>
      name={name}
      kind="list"
      value={values}
      show={show}
      read={(text) => readList(text, measure, units, most)}
      same={(one, other) => one.join() === other.join()}
      still={show(values) || textQuantity(0, limits[measure].use, units)}
      onKeep={(list) => onKeep([...list])}
    />
  );
}
