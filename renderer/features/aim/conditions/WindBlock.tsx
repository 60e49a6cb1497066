import { readWords, windCaution } from '../../../../core/aim/index.ts';
import type { Bundle } from '../../../../core/model/bundle.ts';
import { factorOf, textQuantity } from '../../../../core/units/index.ts';
import { Choice } from '../../../design/Choice.tsx';
import { Mark } from '../../../design/Mark.tsx';
import { WhyLink } from '../../../design/WhyLink.tsx';
import { useUnits } from '../../../state/useBench.ts';
import { Clock } from './Clock.tsx';
import { Facts, type Fact } from './Facts.tsx';
import type { Given } from './given.ts';
import { blownOf, type Blown } from './lands.ts';
import { SliderFigure } from './SliderFigure.tsx';
import { chooseConditions } from './store.ts';
import { fromHour, hours, windText, windWhy } from './windWords.ts';
import { acrossText, bandText, size, upText } from './words.ts';

const strongestSlid = 12;
/** What is shown of a wind while the air is still, in the shown unit. */
const instance = { m: 3, yd: 7 } as const;

/** A steady wind: how far it carries the arrow, and how far to hold off. */
export function WindBlock({ bundle, given, later }: { bundle: Bundle; given: Given; later: Given }) {
  const units = useUnits();
  const { setup } = bundle;
  const storm = windCaution(given.windSpeed);
  const forInstance = instance[units.distance] * factorOf('wind', units);
  const still = later.windSpeed === 0;
  const windSpeed = still ? forInstance : later.windSpeed;
  const blown = blownOf(later.launches, later.distance, windSpeed, later.windHour);
  return (
    <section className="cond-block">
      <div className="cond-head">
        <div>
          <h2 className="plate">Wind</h2>
          <Clock
            hour={given.windHour}
            blows={given.windSpeed > 0}
            onHour={(windHour) => chooseConditions(setup.id, { windHour })}
          />
        </div>
        <div>
          <SliderFigure
            measure="windSpeed"
            name="strength"
            value={given.windSpeed}
            blank={0}
            from={0}
            to={strongestSlid}
            step={units.distance === 'yd' ? 1 : 0.5}
            onKeep={(to) => chooseConditions(setup.id, { windSpeed: to })}
            field="conditions.windSpeed"
          />
          <Choice
            name="from"
            value={String(given.windHour)}
            options={hours.map((text, hour) => ({ value: String(hour), text }))}
            onKeep={(hour) => chooseConditions(setup.id, { windHour: Number(hour) })}
            hint="By the clock, with the target at 12."
            field="conditions.windHour"
          />
        </div>
      </div>
      {given.windSpeed > 0 && <p className="note">{windText(given.windSpeed)}</p>}
      {storm !== null && (
        <p className="cond-storm">
          <Mark level="caution" /> {storm}
        </p>
      )}
      {still && (
        <p className="cond-said">
          Still air: nothing to allow. For instance {textQuantity(forInstance, 'wind', units)} {fromHour(later.windHour)}:
        </p>
      )}
      {blown.ok ? (
        <>
          <Facts facts={facts(blown.value, later)} />
          <p className="note">
            A steady wind. What it does to the arrow’s heading as it leaves the bow is not in it.{' '}
            <WhyLink why={windWhy({ ...later, windSpeed }, blown.value, units)} about="wind" />
          </p>
        </>
      ) : (
        <p className="note">{blown.problem.sentence}</p>
      )}
    </section>
  );

  /** By as much on the scale as its numbers say, where somebody gave what one of them is. */
  function pinText(by: number, way: 'left' | 'right'): Pick<Fact, 'value' | 'band'> {
    const { sightUnit } = setup.settings;
    if (sightUnit === null) return { value: `${textQuantity(by, 'setting', units)} ${way}` };
    return { value: `${readWords(by / sightUnit, sightUnit)} ${way}`, band: 'on the scale' };
  }

  function facts({ drift, up, time, lagRule, allow: { hold } }: Blown, { sightRadius, distance }: Given): readonly Fact[] {
    return [
      {
        name: 'hold off',
        value: `${size(hold.value, units)} ${hold.value > 0 ? 'right' : 'left'}`,
        band: bandText(hold, 'across', units),
        strong: !still,
      },
      ...(sightRadius === null
        ? []
        : [
            {
              name: 'or move the pin',
              ...pinText((sightRadius * Math.abs(hold.value)) / distance, hold.value > 0 ? 'left' : 'right'),
            },
          ]),
      { name: 'drift, not held off', value: acrossText(drift.value, units), band: bandText(drift, 'across', units) },
      { name: 'by the time lost to drag', value: acrossText(lagRule, units) },
      { name: 'height', value: upText(up.value, units), band: bandText(up, 'up', units) },
      { name: 'time of flight', value: textQuantity(time.value, 'time', units, { digits: 2 }) },
    ];
  }
}
