import { useMemo, useState } from 'react';
import type { Finding, Why } from '../../../core/findings/finding.ts';
import { Fraction, Mark, WhyLink } from '../../design/index.ts';
import { RuleUnder } from '../../plots/rule/RuleUnder.tsx';
import { useBench, useBenchApi } from '../../state/useBench.ts';
import { answer } from './goTo.ts';
import { useFindings } from './useFindings.ts';
import { unreadableFinding, waitingFindings } from './waiting.ts';

/**
 * What is in range, or only waits for a figure, is told in a line: its sentence opens with Why, or stands beside the field that it leads to.
 * So the list stays short, and what has to be answered keeps its words.
 */
const isBrief = ({ level, why, action }: Finding): boolean =>
  (level === 'ok' && why !== null) || (level === 'waiting' && action !== null);

const withDetail = (why: Why, detail: string): Why => ({ ...why, text: `${detail}\n${why.text}` });

function Item({ finding }: { finding: Finding }) {
  const bench = useBenchApi();
  const brief = isBrief(finding);
  const why = finding.why !== null && brief ? withDetail(finding.why, finding.detail) : finding.why;
  return (
    <li className={`finding ${finding.level}${brief ? ' brief' : ''}`}>
      <h3>
        <Mark level={finding.level} />
        <span>
          <Fraction>{finding.title.replace(/(\d) (?=\S+$)/u, '$1\u00a0')}</Fraction>
        </span>
      </h3>
      {finding.rule !== null && <RuleUnder rule={finding.rule} level={finding.level} />}
      <p>
        <span className={brief ? 'heard' : undefined}>
          <Fraction>{finding.detail}</Fraction>
        </span>{' '}
        {why !== null && <WhyLink why={why} about={finding.title} />}{' '}
        {finding.action !== null && (
          <button type="button" className="link" onClick={() => answer(bench, finding.action as NonNullable<Finding['action']>)}>
            {finding.action.label}
          </button>
        )}
      </p>
    </li>
  );
}

/** The right column: every check, worst first. On a narrow window a strip of marks that opens over the work. */
export function Findings() {
  const [opened, setOpened] = useState(false);
  const found = useFindings();
  const empty = useBench((state) => state.setupId === null);
  const unreadable = useBench((state) => state.unreadable);
  const findings = useMemo(
    () => [...unreadable.map(unreadableFinding), ...(empty ? waitingFindings : found)],
    [unreadable, empty, found],
  );
  return (
    <aside className={opened ? 'findings opened' : 'findings'} data-region="findings" aria-label="Findings">
      <h2>{empty ? 'Findings will stand here' : 'Findings'}</h2>
      <button type="button" className="strip-open link" aria-expanded={opened} onClick={() => setOpened(!opened)}>
        {opened ? 'Close' : 'Open'}
        <span className="heard"> the findings</span>
      </button>
      <ol className="finding-list">
        {findings.map((finding) => (
          <Item key={finding.id} finding={finding} />
        ))}
      </ol>
      <ol className="strip-list" aria-hidden="true">
        {findings.map((finding) => (
          <li key={finding.id} className={finding.level}>
            <Mark level={finding.level} />
            <b>
              <Fraction>{finding.short.figure}</Fraction>
            </b>
            {finding.short.word}
          </li>
        ))}
      </ol>
    </aside>
  );
}
