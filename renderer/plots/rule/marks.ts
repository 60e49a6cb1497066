import { scaleLinear } from 'd3';
import type { FindingRule } from '../../../core/findings/finding.ts';
import { textWidth } from '../textWidth.ts';

/** Width and height of the rule, px. */
export const ruleSize = { width: 216, height: 30, inset: 4 } as const;

interface RuleMarks {
  readonly from: number;
  readonly to: number;
  readonly ends: readonly number[];
  readonly value: number;
  /** Each about its middle. */
  readonly labels: readonly { readonly x: number; readonly text: string }[];
}

/** The gap that two labels keep, and the size of their letters, px. */
const GAP = 8;
const SIZE = 12;

interface RuleLabel {
  x: number;
  readonly text: string;
  /** From its middle to its end. */
  readonly half: number;
}

const within = (x: number, half: number): number => Math.max(half, Math.min(ruleSize.width - half, x));

/** A label under its end, as far as the rule reaches. */
function under(x: number, text: string): RuleLabel {
  const half = textWidth(text, SIZE, 'text') / 2;
  return { x: within(x, half), text, half };
}

/** Two that would touch are set apart, and again as far as the rule reaches. */
function spread([low, high]: readonly RuleLabel[]): void {
  if (low === undefined || high === undefined) return;
  const wanted = low.half + high.half + GAP;
  const lacks = wanted - (high.x - low.x);
  if (lacks <= 0) return;
  low.x = within(Math.min(low.x - lacks / 2, ruleSize.width - high.half - wanted), low.half);
  high.x = within(low.x + wanted, high.half);
}

/** The rule under a finding: the allowed range as a bracket on a hairline, the value as a mark above it. */
export function ruleMarks(rule: FindingRule): RuleMarks {
  const { width, inset } = ruleSize;
  const x = scaleLinear([rule.min, rule.max], [inset, width - inset]).clamp(true);
  const low = rule.low === null ? null : x(rule.low);
  const high = rule.high === null ? null : x(rule.high);
  const labels = [...(low === null ? [] : [under(low, rule.lowText)]), ...(high === null ? [] : [under(high, rule.highText)])];
  spread(labels);
  return {
    from: low ?? inset,
    to: high ?? width - inset,
    ends: [low, high].filter((end) => end !== null),
    value: x(rule.value),
    labels,
  };
}
