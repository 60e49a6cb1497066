import { textQuantity } from '../../../core/units/index.ts';
import { Fraction, Mark } from '../../design/index.ts';
import { timeText } from '../../state/clock.ts';
import { useBench, useBundle, useUnits } from '../../state/useBench.ts';
import { useDrawnAt } from './drawnAt.ts';

/** Under the work, as on a drawing: who, what, and whether it is kept. */
export function TitleBlock() {
  const bundle = useBundle();
  const units = useUnits();
  const said = useBench((state) => state.said);
  const pending = useBench((state) => state.pending);
  const book = useBench((state) => state.book);
  const drawn = useDrawnAt();
  const bow = bundle?.bow;
  const bowText =
    bow === undefined
      ? 'not named yet'
      : [bow.name, bow.length === null ? null : textQuantity(bow.length, 'length', units)].filter(Boolean).join(', ');
  const refusal = pending === 0 && said?.kind === 'refused' ? said.sentence : null;
  const usual = book === 'demo' ? 'demo: forgotten on closing' : 'as you type, on this computer';
  const kept = pending > 0 ? 'writing…' : said?.kind === 'kept' ? `${timeText(said.at)}, ${said.sentence}` : usual;
  return (
    <footer className="block">
      {refusal !== null && (
        <p className="refusal" role="alert">
          <Mark level="stop" /> <b>Not kept.</b> <Fraction>{refusal}</Fraction>
        </p>
      )}
      <dl>
        <div>
          <dt>archer</dt>
          <dd>{bundle === null ? 'not named yet' : `${bundle.archer.name}, ${bundle.archer.hand} hand`}</dd>
        </div>
        <div>
          <dt>bow</dt>
          <dd>
            <Fraction>{bowText}</Fraction>
          </dd>
        </div>
        <div>
          <dt>arrows</dt>
          <dd>{bundle === null ? 'not named yet' : bundle.arrowSet.name}</dd>
        </div>
        {drawn !== null && (
          <div className="drawn">
            <dt>drawn</dt>
            <dd>{drawn}</dd>
          </div>
        )}
        <div className="kept">
          <dt>kept</dt>
          <dd>
            <span role="status">{kept}</span>
          </dd>
        </div>
      </dl>
    </footer>
  );
}
