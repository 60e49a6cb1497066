import type { Progress } from '../../../../core/photo/index.ts';

/** What is being done, how far it is, and the way to leave it. */
export function WorkTold({ work: { doing, share }, onStop }: { work: Progress; onStop(): void }) {
  return (
    <div className="photo-work">
      <p role="status">{doing} …</p>
      <progress value={share} max={1} aria-label={doing} />
      <button type="button" className="btn" onClick={onStop}>
        Stop
      </button>
    </div>
  );
}
