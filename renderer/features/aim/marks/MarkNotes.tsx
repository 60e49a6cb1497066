import type { SightScale } from '../../../../core/aim/index.ts';
import type { Problem } from '../../../../core/model/problem.ts';
import { textQuantity } from '../../../../core/units/index.ts';
import { Mark } from '../../../design/index.ts';
import { useUnits } from '../../../state/useBench.ts';
import { useEdits } from '../../../state/useEdits.ts';
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
  const { fit, scale } = view.picture;
  if (fit === null) return null;
  // A mark that does not fit is why they miss one another: it is said once.
  const all: readonly Problem[] = fit.ok ? fit.value.notes : [fit.problem];
  const notes = all.filter(({ code }) => code !== 'wider' || !all.some((other) => other.code === 'does-not-fit'));
  const isQuiet = (code: string) => fit.ok && (quiet.has(code) || (code === 'wider' && fit.value.wider < PLAIN));
  if (notes.length === 0 && view.otherScale === null) return null;
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
      {view.otherScale !== null && <OtherScale given={scale} other={view.otherScale} />}
    </div>
  );
}

/** Marks miss one another by so much now and then. */
const PLAIN = 2.5;

/** Good to know, and nothing to see to. */
const quiet: ReadonlySet<string> = new Set(['one-mark', 'one-distance', 'turning']);

function OtherScale({ given, other }: { given: SightScale; other: SightScale }) {
  const units = useUnits();
  const edit = useEdits();
  const unit = other.unit === given.unit ? null : textQuantity(other.unit, 'setting', units);
  const grows = other.grows === given.grows ? null : other.grows === 'down' ? 'downward' : 'upward';
  const how = [unit === null ? null : `with ${unit} a unit`, grows === null ? null : `with numbers that grow ${grows}`]
    .filter((part) => part !== null)
    .join(' and ');
  return (
    <p className="note">
      Read {how} they go together.{' '}
      <button
        type="button"
        className="link"
        onClick={() =>
          void edit.settings('The sight’s scale', {
            ...(unit === null ? {} : { sightUnit: other.unit }),
            ...(grows === null ? {} : { sightGrows: other.grows }),
          })
        }
      >
        Take the scale so
      </button>
    </p>
  );
}
