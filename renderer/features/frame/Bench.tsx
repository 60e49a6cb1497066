import { useEffect } from 'react';
import { useBench } from '../../state/useBench.ts';
import { Bar } from './Bar.tsx';
import { Boundary } from './Boundary.tsx';
import { Closed } from './Closed.tsx';
import { Findings } from './Findings.tsx';
import { keepFocus } from './keepFocus.ts';
import { Rack } from './Rack.tsx';
import { screens } from './screens.ts';
import { TitleBlock } from './TitleBlock.tsx';
import { useAskToStay } from './useAskToStay.ts';
import { useShortcuts } from './shortcuts.ts';
import './frame.css';
import './rack.css';
import './work.css';
import './findings.css';
import './narrow.css';

/** The whole window: bar, rack, work with its title block, findings. */
export function Bench() {
  const phase = useBench((state) => state.phase);
  const screen = useBench((state) => state.screen);
  const setupId = useBench((state) => state.setupId);
  const keys = useShortcuts();
  const View = screens[screen].View;

  useEffect(() => {
    document.title = phase === 'open' ? `${screens[screen].title} – Fistmele` : 'Fistmele';
  }, [phase, screen]);
  // The button that led here may be gone.
  useEffect(keepFocus, [phase, screen, setupId]);

  useAskToStay();

  if (phase === 'opening') return <p className="opening">Opening the notebook…</p>;
  if (phase === 'closed') return <Closed />;
  return (
    <div className="bench">
      <Bar keysOpen={keys.open} onKeys={keys.setOpen} />
      <Rack />
      <main className="work" data-region="work" tabIndex={-1} aria-label={screens[screen].title}>
        {/* A new set-up is a new page: no half-typed figure may cross over. */}
        <Boundary key={screen === 'first' ? screen : `${screen} ${setupId}`}>
          <View />
        </Boundary>
        <TitleBlock />
      </main>
      <Findings />
    </div>
  );
}
