import { useBench, useBenchApi } from '../../state/useBench.ts';

/** The notebook cannot be opened: why, what to do, and what is still possible. Nothing is written in this state. */
export function Closed() {
  const problem = useBench((state) => state.problem);
  const file = useBench((state) => state.info?.notebook.file ?? null);
  const reachable = useBench((state) => state.info !== null);
  const bench = useBenchApi();
  return (
    <main className="closed">
      <h1>The notebook is not open</h1>
      <p>{problem?.sentence ?? 'No reason was given.'}</p>
      {file !== null && (
        <p className="note">
          The notebook is the file <span className="path">{file}</span>. It has not been changed.
        </p>
      )}
      <div className="acts">
        <button type="button" className="btn go" onClick={() => void bench.getState().open('own')}>
          Try again
        </button>
        {reachable && (
          <button type="button" className="btn" onClick={() => void bench.getState().open('demo')}>
            Open the demo bench
          </button>
        )}
      </div>
    </main>
  );
}
