import { useState, type ReactNode } from 'react';
import { recordsOf, setupsOf } from '../../state/selectors.ts';
import { useBench, useBenchApi } from '../../state/useBench.ts';
import { NewSetup } from './NewSetup.tsx';
import { RackItem } from './RackItem.tsx';
import { rackSections } from './rackSections.ts';

/** The left column: every archer with a bow, and below what the screen in front has on its own shelf. */
export function Rack() {
  const records = useBench((state) => state.records);
  const setupId = useBench((state) => state.setupId);
  const screen = useBench((state) => state.screen);
  const book = useBench((state) => state.book);
  const bench = useBenchApi();
  const [adding, setAdding] = useState(false);
  const setups = setupsOf(records);
  const archers = recordsOf(records, 'archer');
  const bows = recordsOf(records, 'bow');
  const Section: (() => ReactNode) | undefined = rackSections[screen];

  return (
    <nav className="rack" data-region="rack" aria-label="Archers and bows">
      <h2>Archers and bows</h2>
      {setups.length === 0 && <p className="rack-none">A first bow waits to be measured.</p>}
      {setups.map((setup) => {
        const archer = archers.find((one) => one.id === setup.archerId);
        const bow = bows.find((one) => one.id === setup.bowId);
        return (
          <RackItem
            key={setup.id}
            text={setup.name}
            small={`${archer?.hand ?? 'right'} hand, ${bow?.name ?? 'no bow'}`}
            on={setup.id === setupId}
            onChoose={() => bench.getState().choose(setup.id)}
          />
        );
      })}
      {setups.length > 0 && <RackItem text="Add a set-up" small="archer, bow or arrows" quiet onChoose={() => setAdding(true)} />}
      {Section !== undefined && setups.length > 0 && <Section />}
      <div className="rack-foot">
        {book === 'demo' ? (
          <button type="button" className="link" onClick={() => void bench.getState().open('own')}>
            Leave the demo
          </button>
        ) : (
          setups.length > 0 && (
            <button type="button" className="link" onClick={() => void bench.getState().open('demo')}>
              Demo bench
            </button>
          )
        )}
      </div>
      {adding && <NewSetup onClose={() => setAdding(false)} />}
    </nav>
  );
}
