import { ok, refuse } from '../../../core/model/problem.ts';
import { PlanField } from './PlanField.tsx';

interface Props {
  name: string;
  value: number;
  least: number;
  most: number;
  onKeep(value: number): unknown;
}

/** A whole number of arrows or ends. Up and down step it by one. */
export function CountField({ name, value, least, most, onKeep }: Props) {
  return (
    <PlanField
      name={name}
      kind="count"
      value={value}
      show={String}
      read={(text) => {
        const count = /^\s*\d{1,3}\s*$/.test(text) ? Number(text) : NaN;
        return count >= least && count <= most
          ? ok(count)
          : refuse('not-a-count', `A whole number from ${least} to ${most} was expected.`);
      }}
      same={(one, other) => one === other}
      still={String(value)}
      stepped={(by) => Math.min(most, Math.max(least, value + by))}
      onKeep={onKeep}
    />
  );
}
