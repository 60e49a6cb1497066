import type { Bundle } from '../../../../core/model/bundle.ts';
import { factorOf } from '../../../../core/units/index.ts';
import { Choice, Figure } from '../../../design/index.ts';
import { useUnits } from '../../../state/useBench.ts';
import { chooseInAim } from '../store.ts';
import { Facts, type Fact } from './Facts.tsx';
import type { Given } from './given.ts';
import type { WrongRow } from './lands.ts';
import { SliderFigure } from './SliderFigure.tsx';
import { chooseConditions } from './store.ts';
import { bandText, far, points, upText } from './words.ts';

const rounds = [
  { value: 'marked', text: 'marked: known' },
  { value: 'unmarked', text: 'unmarked: guessed' },
] as const;

/** A distance that is another than the sight is set for, or that is only guessed. `row`: what it costs here. */
export function DistanceBlock({ bundle, given, later, row }: { bundle: Bundle; given: Given; later: Given; row: WrongRow }) {
  const units = useUnits();
  const { setup } = bundle;
  const per = factorOf('distance', units);
  const known = later.marked && later.believed === later.distance;
  return (
    <section className="cond-block">
      <div className="cond-head">
        <h2 className="plate">Wrong distance</h2>
        <div>
          <div className="cond-pair">
            <Figure
              measure="shootingDistance"
              name="target at"
              value={given.distance}
              required
              onKeep={(value) => chooseInAim(setup.id, { setFor: value })}
              field="aim.setFor"
            />
            <Choice
              name="distances"
              value={given.marked ? 'marked' : 'unmarked'}
              options={rounds}
              onKeep={(kind) => chooseConditions(setup.id, { marked: kind === 'marked' })}
              field="conditions.marked"
            />
          </div>
          {given.marked ? (
            <SliderFigure
              measure="shootingDistance"
              name={given.withSight ? 'sight set for' : 'aimed as for'}
              value={given.believed}
              from={Math.max(5 * per, 0.6 * given.distance)}
              to={1.4 * given.distance}
              step={1}
              onKeep={(believed) => chooseConditions(setup.id, { believed })}
              field="conditions.believed"
            />
          ) : (
            <SliderFigure
              measure="distanceOff"
              name="guessed within"
              value={given.within}
              from={0}
              to={15 * per}
              step={1}
              onKeep={(within) => chooseConditions(setup.id, { within })}
              hint="95 of 100 guesses lie so near."
              field="conditions.within"
            />
          )}
        </div>
      </div>
      {known && (
        <p className="cond-said">
          {later.withSight ? 'Set' : 'Aimed'} right. If it were {far(row.off, units)} out:
        </p>
      )}
      {row.guess === null ? (
        <p className="note">So near, nobody misjudges it by {far(row.off, units)}.</p>
      ) : (
        <Facts facts={facts(row)} />
      )}
    </section>
  );

  function facts({ guess, known: right, short, long: over, guessing }: WrongRow): readonly Fact[] {
    if (guess === null) return [];
    const { farther, nearer } = guess;
    const instead = `instead of ${points(right)}`;
    const long = later.marked && later.believed > later.distance;

    const set = later.withSight ? 'set' : 'aimed';
    const [low, high] = later.marked ? [`${set} too short`, `${set} too long`] : ['target farther', 'target nearer'];
    return [
      {
        name: low,
        value: upText(farther.value, units),
        band: bandText(farther, 'up', units),
        strong: later.marked && !known && !long,
      },
      { name: high, value: upText(nearer.value, units), band: bandText(nearer, 'up', units), strong: !known && long },
      ...(later.marked
        ? [
            { name: 'points, too short', value: points(short), band: instead },
            { name: 'points, too long', value: points(over), band: instead },
          ]
        : [
            { name: 'points, guess after guess', value: points(guessing), band: instead, strong: true },
            { name: `points, ${far(row.off, units)} short`, value: points(short), band: instead },
          ]),
    ];
  }
}
