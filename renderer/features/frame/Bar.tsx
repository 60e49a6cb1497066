import { useState } from 'react';
import { Dialog } from '../../design/index.ts';
import { useBench, useBenchApi } from '../../state/useBench.ts';
import { inBar, screens } from './screens.ts';
import { keyTable } from './shortcuts.ts';
import { UnitsPage, unitsText } from './UnitsPage.tsx';

/** The top of the window: name, screens, units, undo, help. */
export function Bar({ keysOpen, onKeys }: { keysOpen: boolean; onKeys(open: boolean): void }) {
  const [unitsOpen, setUnitsOpen] = useState(false);
  const screen = useBench((state) => state.screen);
  const hasSetup = useBench((state) => state.setupId !== null);
  const book = useBench((state) => state.book);
  const units = useBench((state) => state.preferences.units);
  const undoState = useBench((state) => state.undoState);
  const bench = useBenchApi();

  return (
    <header className="bar" data-region="bar">
      <p className="trade-name">
        <svg width="84" height="32" aria-hidden="true">
          <text x="0" y="20">
            Fistmele
          </text>
          <path d="M1 23.5v7M83 23.5v7M1 27h82" />
          <path className="head" d="M1 27l7.5-1.9v3.8zM83 27l-7.5-1.9v3.8z" />
        </svg>
        <span className="heard">Fistmele</span>
      </p>
      <nav aria-label="Screens">
        {inBar.map((name) => (
          <button
            key={name}
            type="button"
            disabled={!hasSetup}
            aria-current={screen === name ? 'page' : undefined}
            onClick={() => bench.getState().go(name)}
          >
            {screens[name].title}
          </button>
        ))}
      </nav>
      <div className="bar-right">
        {book === 'demo' && <span className="demo-word">demo bench</span>}
        <button type="button" className="quiet units" onClick={() => setUnitsOpen(true)}>
          <span className="heard">Units and light: </span>
          <span className="wide">{unitsText(units)}</span>
          <span className="narrow">Units</span>
        </button>
        <button
          type="button"
          className="quiet"
          disabled={undoState.undo === null}
          title={undoState.undo === null ? 'Nothing to undo' : `Undo: ${undoState.undo.label}`}
          onClick={() => void bench.getState().undo()}
        >
          Undo
        </button>
        <button
          type="button"
          className="quiet"
          disabled={undoState.redo === null}
          title={undoState.redo === null ? 'Nothing to redo' : `Redo: ${undoState.redo.label}`}
          onClick={() => void bench.getState().redo()}
        >
          Redo
        </button>
        <button type="button" className="quiet" onClick={() => onKeys(true)}>
          Keys
        </button>
      </div>
      {unitsOpen && <UnitsPage onClose={() => setUnitsOpen(false)} />}
      {keysOpen && (
        <Dialog title="Keys" onClose={() => onKeys(false)}>
          <table className="symbols">
            <tbody>
              {keyTable.map(({ keys, does }) => (
                <tr key={keys}>
                  <th scope="row">{keys}</th>
                  <td>{does}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </Dialog>
      )}
    </header>
  );
}
