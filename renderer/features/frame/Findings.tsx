import { useMemo, useState } from 'react';
import type { Finding } from '../../../core/findings/finding.ts';
import { Fraction, Mark, WhyLink } from '../../design/index.ts';
import { RuleUnder } from '../../plots/rule/RuleUnder.tsx';
import { useBench, useBenchApi } from '../../state/useBench.ts';
import { answer } from './goTo.ts';
import { useFindings } from './useFindings.ts';
import { unreadableFinding, waitingFindings } from './waiting.ts';

function Item({ finding }: { finding: Finding }) {
  const bench = useBenchApi();
  return (
    <li className={`finding ${finding.level}`}>
      <h3>
        <Mark level={finding.level} />
        <span>
          <Fraction>{finding.title}</Fraction>
        </span>
      </h3>
      {finding.rule !== null && <RuleUnder rule={finding.rule} level={finding.level} />}
      <p>
        <Fraction>{finding.detail}</Fraction> {finding.why !== null && <WhyLink why={finding.why} about={finding.title} />}{' '}
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
