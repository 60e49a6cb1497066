import type { Frame } from './useFrame.ts';

/** The whole face, or closer in on the shots: the frame changes when it is asked to. */
export function FrameButton({ frame }: { frame: Frame }) {
  return (
    <button type="button" className="link" disabled={!frame.canTurn} onClick={frame.turn}>
      {frame.isWhole ? 'Close in' : 'Whole face'}
    </button>
  );
}
