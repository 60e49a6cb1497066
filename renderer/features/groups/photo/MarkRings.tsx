import type { ReactNode } from 'react';
import { Choice } from '../../../design/index.ts';
import { type RingPoint, type Tool } from './ringMarks.ts';

interface Props {
  tools: readonly { readonly value: Tool; readonly text: string }[];
  tool: Tool;
  marks: readonly RingPoint[];
  /** What is still missing, in a sentence. */
  wants: string | null;
  canFlatten: boolean;
  onTool(tool: Tool): void;
  onClear(): void;
  onFlatten(): void;
  children: ReactNode;
}

/** What a click in the photo marks, how far the marks have come, and the way on to the straightened face. */
export function MarkRings({ tools, tool, marks, wants, canFlatten, onTool, onClear, onFlatten, children }: Props) {
  return (
    <>
      <Choice name="a click marks" value={tool} options={tools} onKeep={onTool} />
      <p className="hint">{hintOf(tool)}</p>
      {wants !== null && (
        <p className="note" role="status">
          {wants}
        </p>
      )}
      <div className="acts">
        {canFlatten && (
          <button type="button" className="btn" onClick={onFlatten}>
            Straighten the face
          </button>
        )}
        {marks.length > 0 && (
          <button type="button" className="link" onClick={onClear}>
            Take out {marks.length === 1 ? 'the mark' : `the ${marks.length} marks`}
          </button>
        )}
        {children}
      </div>
    </>
  );
}

function hintOf(tool: Tool): string {
  if (tool === 'up')
    return 'A number printed straight above the centre will do, or where a plumb line through the centre meets the last ring.';
  if (tool === 'gold') return 'Where several faces hang: the rings round the gold that is clicked are looked for anew.';
  return 'Five points or more all round one ring, then two or more on another, or the centre: the rings follow. A mark can be pulled.';
}
