import type { Problem } from '../../../../core/model/problem.ts';
import { Mark } from '../../../design/index.ts';
import { GoLink } from '../GoLink.tsx';
import type { MarksView } from './derive.ts';

/** Where a refusal's field stands on this page. */
const fields: Readonly<Record<string, string>> = {
  unit: 'settings.sightUnit',
  grows: 'settings.sightGrows',
  highest: 'settings.sightHighest',
  sightUnit: 'settings.sightUnit',
  sightRadius: 'settings.sightRadius',
};

/** What must be known of the marks, where they are typed: why they are refused, what does not fit, and what would put it right. */
export function MarkNotes({ view }: { view: MarksView }) {
  const { fit } = view.picture;
  if (fit === null) return null;
  // A mark that does not fit is why they miss one another: it is said once.
  const all: readonly Problem[] = fit.ok ? fit.value.notes : [fit.problem];
  const notes = all.filter(({ code }) => code !== 'wider' || !all.some((other) => other.code === 'does-not-fit'));
  const isQuiet = (code: string) => fit.ok && (quiet.has(code) || (code === 'wider' && fit.value.wider < PLAIN));
  if (notes.length === 0) return null;
  return (
    <div className="marks-notes" role="status">
      {notes.map(({ code, sentence, field }) => (
        <p key={code + sentence} className={isQuiet(code) ? 'note' : 'caution-text'}>
          {!isQuiet(code) && <Mark level="caution" />} {sentence}
          {code === 'off-bar' && (
            <>
              {' '}
              <GoLink to={['aim', 'settings.sightHighest']}>The ends of the bar</GoLink>
            </>
          )}
          {field !== undefined && fields[field] !== undefined && (
            <>
              {' '}
              <GoLink to={['aim', fields[field]]}>Enter it</GoLink>
            </>
          )}
        </p>
      ))}
    </div>
  );
}

/** Marks miss one another by so much now and then. */
const PLAIN = 2.5;

/** Good to know, and nothing to see to. */
const quiet: ReadonlySet<string> = new Set(['one-mark', 'one-distance', 'turning']);
