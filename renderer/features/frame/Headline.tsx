import type { Finding, Screen } from '../../../core/findings/finding.ts';
import { capital, dependentsStopped } from '../../../core/findings/index.ts';
import { countWord } from '../../../core/model/sentence.ts';
import { Fraction, Mark } from '../../design/index.ts';
import { useFindings } from './useFindings.ts';

const grave = (finding: Finding) => finding.level === 'stop' || finding.level === 'caution';

/** The one headline of a form's screen: the worst finding that this screen can mend, that nothing is out of range, or that the form is blank. */
export function Headline({ screen, clear, note, blank }: { screen: Screen; clear: string; note: string; blank?: boolean }) {
  const findings = useFindings();
  const stop = dependentsStopped(findings) ? findings.find((finding) => finding.level === 'stop') : undefined;
  const here = findings.filter((finding) => finding.action?.kind === 'go' && finding.action.screen === screen);
  const worst = stop ?? here.find(grave);
  const waiting = here.filter((finding) => finding.level === 'waiting' || finding.level === 'unknown');
  // What was measured on the bow does not make a blank arrow sound, nor the other way round.
  const known = blank === undefined ? findings.some((finding) => finding.level === 'ok') : !blank;
  // A stop that another page mends is said here too: whatever this page finds in order, nothing is shot.
  const elsewhere = findings.find((finding) => finding.level === 'stop' && finding !== worst);
  const others = findings.filter((finding) => grave(finding) && finding !== worst && finding !== elsewhere).length;
  const title =
    worst?.title ??
    (!known
      ? `Nothing is measured on this ${screen} yet`
      : waiting.length === 0
        ? clear
        : `${clear}; ${things(waiting.length, 'check')} still ${waiting.length === 1 ? 'waits' : 'wait'}`);
  return (
    <div className="head">
      <h1>
        <Fraction>{title}</Fraction>
      </h1>
      <p>
        {elsewhere !== undefined && (
          <>
            <Mark level="stop" /> <Fraction>{`${elsewhere.title}. `}</Fraction>
          </>
        )}
        {others > 0 && `${capital(things(others, worst === undefined ? 'caution' : 'other finding'))} in the column. `}
        <Fraction>{note}</Fraction>
      </p>
    </div>
  );
}

const things = (n: number, thing: string): string => `${countWord(n)} ${thing}${n === 1 ? '' : 's'}`;
