import type { Finding, Screen } from '../../../core/findings/finding.ts';
import { dependentsStopped } from '../../../core/findings/index.ts';
import { Fraction } from '../../design/index.ts';
import { useFindings } from './useFindings.ts';

const grave = (finding: Finding) => finding.level === 'stop' || finding.level === 'caution';

/** The one headline of a form's screen: the worst finding that this screen can mend, or that nothing is out of range. */
export function Headline({ screen, clear, note }: { screen: Screen; clear: string; note: string }) {
  const findings = useFindings();
  const stop = dependentsStopped(findings) ? findings.find((finding) => finding.level === 'stop') : undefined;
  const here = findings.filter((finding) => finding.action?.kind === 'go' && finding.action.screen === screen);
  const worst = stop ?? here.find(grave);
  const waiting = here.filter((finding) => finding.level === 'waiting' || finding.level === 'unknown');
  const title =
    worst?.title ??
    (waiting[0] === undefined
      ? clear
      : `${clear}; ${count(waiting.length)} ${waiting.length === 1 ? 'waits' : 'wait'} for a figure`);
  const others = findings.filter((finding) => grave(finding) && finding !== worst).length;
  return (
    <div className="head">
      <h1>
        <Fraction>{title}</Fraction>
      </h1>
      <p>
        {others > 0 &&
          `${count(others)[0]?.toUpperCase()}${count(others).slice(1)} more ${others === 1 ? 'stands' : 'stand'} in the findings. `}
        <Fraction>{note}</Fraction>
      </p>
    </div>
  );
}

const words = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine'];
const count = (n: number): string => words[n] ?? String(n);
