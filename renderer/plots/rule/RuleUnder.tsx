import type { FindingRule, Level } from '../../../core/findings/finding.ts';
import { ruleMarks, ruleSize } from './marks.ts';
import './rule.css';

/** Drawn for the eye only: the finding's sentence carries the same figures. */
export function RuleUnder({ rule, level }: { rule: FindingRule; level: Level }) {
  const marks = ruleMarks(rule);
  const { width, height, inset } = ruleSize;
  return (
    <svg className={`rule-under ${level}`} width={width} height={height} aria-hidden="true">
      <path className="line" d={`M${inset} 8H${width - inset}`} />
      <path className="range" d={`M${marks.from} 8H${marks.to}`} />
      {marks.ends.map((end) => (
        <path key={end} className="end" d={`M${end} 3V13`} />
      ))}
      <path className="value" d={`M${marks.value} 7l-4.5-8h9z`} />
      {marks.labels.map((label, i) => (
        <text key={i} className="tick" x={label.x} y="26" textAnchor="middle">
          {label.text}
        </text>
      ))}
    </svg>
  );
}
