import type { Bundle } from '../../../../core/model/bundle.ts';
import { WhyLink } from '../../../design/WhyLink.tsx';
import { useUnits } from '../../../state/useBench.ts';
import { Raised } from '../Raised.tsx';
import { Facts, type Fact } from './Facts.tsx';
import type { Given } from './given.ts';
import { hillOf, type HillSide } from './lands.ts';
import { SliderFigure } from './SliderFigure.tsx';
import { chooseConditions } from './store.ts';
import { gapText, hillWhy } from './hillWords.ts';
import { useSightReading } from './useSightReading.ts';
import { bandText, degrees, far, settingRange, settingText, upText } from './words.ts';

const steepestSlid = Math.PI / 4;
/** What is shown of a hill while the ground is level. */
const forInstance = Math.PI / 12;

/** A target up or down a slope: what to set the sight for, the rule beside it, and why they differ. */
export function HillBlock({ bundle, given, later }: { bundle: Bundle; given: Given; later: Given }) {
  const units = useUnits();
  const level = later.slope === 0;
  const slope = level ? forInstance : later.slope;
  const reads = useSightReading(bundle);
  const hill = hillOf(later.launches, later.distance, slope);
  return (
    <section className="cond-block">
      <div className="cond-head">
        <h2 className="plate">Hill</h2>
        <SliderFigure
          measure="slope"
          name="slope, up +"
          value={given.slope}
          blank={0}
          from={-steepestSlid}
          to={steepestSlid}
          step={1}
          onKeep={(to) => chooseConditions(bundle.setup.id, { slope: to })}
          field="conditions.slope"
        />
      </div>
      {level && <p className="cond-said">Level: nothing to allow. For instance:</p>}
      {hill.ok ? (
        <>
          {!level && <Raised by={hill.value.sides.find((side) => side.slope === slope)?.raised ?? 0} />}
          <Facts facts={facts(hill.value.sides, hill.value.cosineRule, later, slope)} />
          {hill.value.gap !== null && (
            <p className="note">
              {gapText(slope, hill.value.gap, units)}{' '}
              <WhyLink why={hillWhy({ ...later, slope }, hill.value, units)} about="hill" />
            </p>
          )}
        </>
      ) : (
        <p className="note">{hill.problem.sentence}</p>
      )}
    </section>
  );

  function facts(sides: readonly HillSide[], cosineRule: number, asked: Given, steep: number): readonly Fact[] {
    const set = asked.withSight ? 'set for' : 'aim as for';
    const chosen = sides.find((side) => side.slope === steep);
    return [
      ...sides.map(({ slope: one, setFor }) => ({
        name: `${degrees(one)} ${one > 0 ? 'up' : 'down'}, ${set}`,
        value: setFor === null ? 'none' : settingText(setFor, units),
        band:
          setFor === null
            ? ''
            : [settingRange(setFor, units), (asked.withSight && reads(setFor.value)) || '']
                .filter((part) => part !== '')
                .join(', '),
        strong: one === steep && asked.slope !== 0,
      })),
      { name: 'cosine rule', value: far(cosineRule, units) },
      ...(chosen === undefined
        ? []
        : [
            {
              name: 'not allowed for',
              value: upText(chosen.up.value, units),
              band: bandText(chosen.up, 'up', units),
            },
          ]),
    ];
  }
}
