import { Fraction, WhyLink } from '../../design/index.ts';
import { Causes } from './Causes.tsx';
import { headOf } from './headOf.ts';
import type { PartProps } from './shared.ts';
import { wasChanged } from './changed.ts';
import { soFar } from './standing.ts';
import { standIn } from './store.ts';
import { TrialPicture } from './TrialPicture.tsx';
import { drawsNothing } from './pictureWords.ts';
import { withUnit } from './words.ts';

/** What the shots say: the finding's figures with their intervals, the picture, and what may lie behind it. */
export function ReadPart({ input, trial, told, reading, rows }: PartProps) {
  const { figures, plot, causes, disputed, more } = reading;
  // What the page's headline says already is not said twice.
  const headed = headOf(trial, told, rows, reading).headline !== reading.headline;
  const adds = more !== null && !/ more of each/.test(reading.subline) ? more.text : '';
  const early = soFar(trial, rows, reading);
  const changed = wasChanged(trial, reading);
  const toChange = changed || (!early && (rows.next === null || reading.verdict === 'read' || reading.verdict === 'stopped'));
  return (
    <div className="read-part">
      {(headed || adds !== '') && (
        <p className="read-line">
          {headed && (
            <Fraction>{`${early ? 'So far, and no verdict yet: ' : ''}${reading.headline}. ${reading.subline} `}</Fraction>
          )}
          <Fraction>{adds}</Fraction>
        </p>
      )}
      {reading.verdict === 'stopped' && <p className="read-line">Nothing is read while this stands: it is mended first.</p>}
      <div className="read-columns">
        {plot !== null && !drawsNothing(plot) && <TrialPicture plot={plot} input={input} reading={reading} />}
        {figures.length > 0 && (
          <table className="table read-figures">
            <tbody>
              {figures.map(({ name, value, interval }) => (
                <tr key={name}>
                  <th scope="row">
                    <Fraction>{withUnit(name)}</Fraction>
                  </th>
                  <td colSpan={interval === '' ? 2 : 1} className={interval === '' ? 'told' : undefined}>
                    <Fraction>{withUnit(value)}</Fraction>
                  </td>
                  {interval !== '' && (
                    <td className="interval">
                      <Fraction>{withUnit(interval)}</Fraction>
                    </td>
                  )}
                </tr>
              ))}
            </tbody>
          </table>
        )}
      </div>
      {causes.length > 0 && <Causes causes={causes} />}
      {disputed.length > 0 && (
        <section className="disputed">
          <h3 className="name">What the trade disputes</h3>
          <ul className="plan-lines">
            {disputed.map((line) => (
              <li key={line}>
                <Fraction>{line}</Fraction>
              </li>
            ))}
          </ul>
        </section>
      )}
      <div className="acts">
        <button
          type="button"
          className="btn go"
          onClick={() => standIn(trial.id, { part: toChange ? 'change' : 'shoot', row: null })}
        >
          {toChange ? 'Go on to the change' : 'Go on shooting'}
        </button>
        <WhyLink why={reading.why} about="the reading" />
      </div>
    </div>
  );
}
