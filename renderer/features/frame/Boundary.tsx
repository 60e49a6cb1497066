import { Component, type ReactNode } from 'react';
import { BenchContext } from '../../state/useBench.ts';

interface State {
  readonly fault: string | null;
}

/** A fault in one screen must not take the window with it: the rest stays usable, and what was kept is kept. */
export class Boundary extends Component<{ children: ReactNode }, State> {
  static override contextType = BenchContext;
  declare context: React.ContextType<typeof BenchContext>;
  override state: State = { fault: null };

  static getDerivedStateFromError(error: unknown): State {
    return { fault: error instanceof Error ? error.message : String(error) };
  }

  override render(): ReactNode {
    if (this.state.fault === null) return this.props.children;
    return (
      <>
        <div className="head">
          <h1>This page could not be drawn</h1>
          <p>A fault of the bench, not yours. Everything entered is kept in the notebook; the other pages go on working.</p>
        </div>
        <div className="body">
          <p className="note">What it says of itself: {this.state.fault}</p>
          <div className="acts">
            <button type="button" className="btn" onClick={() => this.context?.getState().go('bow')}>
              Go to the Bow page
            </button>
            <button type="button" className="btn" onClick={() => this.setState({ fault: null })}>
              Try again
            </button>
          </div>
        </div>
      </>
    );
  }
}
