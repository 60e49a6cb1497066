import type { Face, Point } from '../../../../core/group/index.ts';
import type { PicturePoint } from '../../../../core/model/picture.ts';
import type { Homography } from '../../../../core/photo/index.ts';
import { RingLines } from './RingLines.tsx';
import type { RingPoint } from './ringMarks.ts';
import { Stage } from './Stage.tsx';
import type { OpenPhoto } from './usePhoto.ts';
import { usePointEntry } from './usePointEntry.ts';

interface Props {
  face: Face;
  photo: OpenPhoto;
  /** How the face lies, as far as it is known. */
  homography: Homography | null;
  size: number;
  marks: readonly RingPoint[];
  up: PicturePoint | null;
  /** What the next click marks, in words. */
  tool: string;
  onAdd(at: PicturePoint): number | null;
  onMove(id: number, at: PicturePoint): void;
  onTake(id: number | null): void;
}

/** The photo as it is, under the rings as they are thought to lie in it: here rings are marked by hand. */
export function RawPhoto({ face, photo, homography, size, marks, up, tool, ...on }: Props) {
  const scale = Math.min(size / photo.width, size / photo.height);
  const [width, height] = [Math.round(photo.width * scale), Math.round(photo.height * scale)];
  const toPixel = ({ x, y }: Point): Point => ({ x: x * width, y: y * width });
  const most = photo.height / photo.width;
  const entry = usePointEntry({
    marks: marks.map(({ id, picture }) => ({ id, x: picture.x, y: picture.y })),
    radius: 5,
    toPlane: ({ x, y }) => ({ x: x / width, y: y / width }),
    toPixel,
    coarse: 0.01,
    fine: 0.001,
    up: -1,
    start: { x: 0.5, y: most / 2 },
    held: ({ x, y }) => ({ x: Math.max(0, Math.min(1, x)), y: Math.max(0, Math.min(most, y)) }),
    ...on,
  });
  const drawn = marks.map(({ id, picture }) => ({ id, at: toPixel(picture) }));
  const above = up === null ? null : toPixel(up);
  return (
    <Stage
      width={width}
      height={height}
      bitmap={photo.bitmap}
      at={{ left: 0, top: 0, width, height }}
      handlers={entry.handlers}
      cross={entry.cross === null ? null : toPixel(entry.cross)}
      looking={entry.at === null ? null : toPixel(entry.at)}
      said={['a click marks', tool]}
      marks={drawn.map((mark) => mark.at)}
      aria-label={`The photo. ${marks.length} points of rings are marked. Arrow keys move the cross, Enter marks ${tool}, Backspace takes the last mark out.`}
    >
      {homography !== null && <RingLines face={face} homography={homography} width={width} />}
      {drawn.map(({ id, at }) => (
        <g key={id} className="photo-mark" transform={`translate(${at.x} ${at.y})`}>
          <path className="case" d="M-5 -5L5 5M-5 5L5 -5" />
          <path d="M-5 -5L5 5M-5 5L5 -5" />
          {id === entry.chosen && <circle className="shot-chosen" r="10" />}
        </g>
      ))}
      {above !== null && (
        <g className="photo-mark" transform={`translate(${above.x} ${above.y})`}>
          <path className="case" d="M0 -8V8M-5 -2L0 -8L5 -2" />
          <path d="M0 -8V8M-5 -2L0 -8L5 -2" />
        </g>
      )}
    </Stage>
  );
}
