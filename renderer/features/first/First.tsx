import { useState, type ComponentProps } from 'react';
import type { Hand } from '../../../core/model/archer.ts';
import type { ArrowSet } from '../../../core/model/arrowSet.ts';
import type { Settings } from '../../../core/model/setup.ts';
import { Choice, Figure } from '../../design/index.ts';
import { PencilBow } from '../../drawing/PencilBow.tsx';
import { born, edited } from '../../state/bench.ts';
import { newArcher, newArrowSet, newBow, newSetup, noSettings, readAt } from '../../state/births.ts';
import { bundleOf } from '../../state/selectors.ts';
import { useBench, useBenchApi, useBundle } from '../../state/useBench.ts';
import './first.css';

/** Three figures and the bench begins: the first one that is kept gives birth to archer, bow, arrows and set-up. */
export function First() {
  const bench = useBenchApi();
  const book = useBench((state) => state.book);
  const bundle = useBundle();
  const [hand, setHand] = useState<Hand>(bundle?.archer.hand ?? 'right');

  // What is there is asked when the write's turn comes: two quick figures must not begin two bows.
  const keep = (label: string, settings: Partial<Settings>, arrow: Partial<ArrowSet>) =>
    bench.getState().change(label, (records) => {
      const here = bundleOf(records, bench.getState().setupId);
      if (here !== null) {
        return [
          edited(here.setup, { settings: { ...here.setup.settings, ...settings } }),
          ...(Object.keys(arrow).length > 0 ? [edited(here.arrowSet, arrow)] : []),
        ];
      }
      const archer = newArcher('First archer', hand);
      const bow = newBow('First bow', hand);
      const arrowSet = { ...newArrowSet('First arrows'), ...arrow };
      const setup = newSetup('First archer', archer, bow, arrowSet, { ...noSettings, ...settings });
      return [archer, bow, arrowSet, setup].map(born);
    });

  const changeHand = (value: Hand) => {
    setHand(value);
    void bench.getState().change(`${value === 'right' ? 'Right' : 'Left'} hand`, (records) => {
      const here = bundleOf(records, bench.getState().setupId);
      return here === null ? [] : [edited(here.archer, { hand: value }), edited(here.bow, { hand: value })];
    });
  };

  return (
    <>
      <div className="head plate-head">
        <h1>Measure one bow, and the bench begins</h1>
        <p>
          A tape and a bow scale are enough. Three figures give the first checks; the rest stays in pencil until you measure it.
        </p>
      </div>
      <div className="body first">
        <PencilBow hand={hand} />
        <div className="first-blanks">
          <Blank
            number="1"
            measure="braceHeight"
            name="brace height"
            value={bundle?.setup.settings.braceHeight ?? null}
            onKeep={(braceHeight) => keep('Brace height', { braceHeight }, {})}
            hint="String to the deepest point of the grip, square to the string. Type 8 1/2, or 216 mm, then Tab."
            field="first.braceHeight"
          />
          <Blank
            number="2"
            measure="weightOnFingers"
            name="weight on the fingers, at full draw"
            value={bundle?.setup.settings.weightOnFingers ?? null}
            onKeep={(weightOnFingers) => keep('Weight on the fingers', readAt(weightOnFingers, bundle?.archer), {})}
            hint="A bow scale on the string. No scale? Leave it, and enter the weight marked on the limb on the next page."
            field="first.weightOnFingers"
          />
          <Blank
            number="3"
            measure="arrowLength"
            name="arrow length"
            value={bundle?.arrowSet.length ?? null}
            onKeep={(length) => keep('Arrow length', {}, { length })}
            hint="Throat of the nock to the end of the shaft; the point is not counted."
            field="first.arrowLength"
          />
          <Choice
            name="hand"
            value={hand}
            options={[
              { value: 'right', text: 'right: draws with the right hand' },
              { value: 'left', text: 'left: draws with the left hand' },
            ]}
            onKeep={changeHand}
          />
          <div className="acts">
            <button type="button" className="btn go" disabled={bundle === null} onClick={() => bench.getState().go('bow')}>
              Go on to the bow
            </button>
            {bundle === null && <span className="note">Enter one figure first.</span>}
          </div>
          {book === 'own' && bundle === null && (
            <section className="look-round">
              <h2 className="plate">Or look round first</h2>
              <p className="note">
                Hazel Weir, an invented club: four archers, their bows and groups. It never mixes with your own.
              </p>
              <div className="acts">
                <button type="button" className="btn" onClick={() => void bench.getState().open('demo')}>
                  Open the demo bench
                </button>
              </div>
            </section>
          )}
        </div>
      </div>
    </>
  );
}

/** A numbered blank: the number stands on the drawing too. */
function Blank({ number, ...figure }: ComponentProps<typeof Figure> & { number: string }) {
  return (
    <div className="blank">
      <span className="blank-number" aria-hidden="true">
        {number}
      </span>
      <Figure {...figure} />
    </div>
  );
}
