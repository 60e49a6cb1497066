import { scaleLinear } from 'd3';
import type { FindingRule } from '../../../core/findings/finding.ts';

/** Width and height of the rule, px. */
export const ruleSize = { width: 216, height: 30, inset: 4 } as const;

interface RuleMarks {
  readonly from: number;
  readonly to: number;
  readonly ends: readonly number[];
  readonly value: number;
  readonly labels: readonly { readonly x: number; readonly text: string; readonly anchor: 'start' | 'middle' | 'end' }[];
}

/** The rule under a finding: the allowed range as a bracket on a hairline, the value as a mark above it. */
export function ruleMarks(rule: FindingRule): RuleMarks {
  const { width, inset } = ruleSize;
  const x = scaleLinear([rule.min, rule.max], [inset, width - inset]).clamp(true);
  const low = rule.low === null ? null : x(rule.low);
  const high = rule.high === null ? null : x(rule.high);
  const labels: { x: number; text: string; anchor: 'start' | 'middle' | 'end' }[] = [];
  // Two labels that would touch are set outwards from their ends instead of under them.
  const near = low !== null && high !== null && high - low < 64;
  if (low !== null) labels.push({ x: low, text: rule.lowText, anchor: near ? 'end' : low < 18 ? 'start' : 'middle' });
  if (high !== null) labels.push({ x: high, text: rule.highText, anchor: near ? 'start' : high > width - 34 ? 'end' : 'middle' });
  return {
    from: low ?? inset,
    to: high ?? width - inset,
    ends: [low, high].filter((end) => end !== null),
    value: x(rule.value),
    labels,
  };
}
