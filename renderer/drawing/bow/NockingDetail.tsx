import { DimensionFigure, DimensionLine } from '../dimension/index.ts';
import { pathOf } from '../path.ts';
import type { DrawnFigure } from './BowDrawing.tsx';
import type { NockingDetail as Marks } from './details.ts';

/** A: what a bow square shows at the string. */
export function NockingDetail({ marks, figure, measured }: { marks: Marks; figure: DrawnFigure; measured: boolean }) {
  const { width, height, k, string, shaftTop, shaftBottom, square, x, leader, squareName } = marks;
  const mm = k / 1000;
  const at = (places: readonly (readonly [number, number])[], closed = false) =>
    pathOf(
      places.map(([px, py]) => [x(px), py] as const),
      closed,
    );
  const high = shaftBottom - shaftTop;
  const [top, bottom] = [4, Math.max(square, shaftBottom) + 20];
  const half = Math.max(1.1 * mm, 2.4);
  const shaftEnd = string - 10 * mm;
  const pattern = [];
  for (let y = top + 3; y < bottom - 2; y += 3)
    pattern.push([[string - half, y + 1.2] as const, [string + half, y - 1.2] as const]);
  const tied = (y: number, up: 1 | -1) =>
    at(
      [
        [string - half - 2.2, y],
        [string + half + 2.2, y],
        [string + half + 1.4, y + up * -7],
        [string - half - 1.4, y + up * -7],
      ],
      true,
    );
  return (
    <div className="detail-sheet" style={{ width, height }}>
      <svg width={width} height={height} aria-hidden="true" className={measured ? undefined : 'in-lead'}>
        <path
          className="centre-line"
          d={at([
            [marks.squareFrom, square],
            [width, square],
          ])}
        />
        <path
          className="bow-part inner limb"
          d={at(
            [
              [string - half, top],
              [string + half, top],
              [string + half, bottom],
              [string - half, bottom],
            ],
            true,
          )}
        />
        {pattern.map((twist) => (
          <path key={twist[0]?.[1]} className="twist" d={at(twist)} />
        ))}
        <path
          className="bow-part outline hole"
          d={at(
            [
              [4, shaftTop],
              [shaftEnd, shaftTop],
              [shaftEnd + 2.5 * mm, shaftTop + high * 0.06],
              [string - half, shaftTop + high * 0.1],
              [string + half + 1.4 * mm, shaftTop + high * 0.08],
              [string + half + 1.4 * mm, shaftTop + high * 0.34],
              [string, shaftTop + high * 0.36],
              [string - half, shaftTop + high * 0.5],
              [string, shaftTop + high * 0.64],
              [string + half + 1.4 * mm, shaftTop + high * 0.66],
              [string + half + 1.4 * mm, shaftTop + high * 0.92],
              [string - half, shaftTop + high * 0.9],
              [shaftEnd + 2.5 * mm, shaftTop + high * 0.94],
              [shaftEnd, shaftBottom],
              [4, shaftBottom],
            ],
            false,
          )}
        />
        <path
          className="bow-part inner line"
          d={at([
            [shaftEnd, shaftTop],
            [shaftEnd, shaftBottom],
          ])}
        />
        <path className="bow-part inner grip" d={tied(shaftTop + high * 0.06 - 1, 1)} />
        <path className="bow-part inner grip" d={tied(shaftBottom - high * 0.06 + 1, -1)} />
        <DimensionLine span={marks.dimension} measured={measured} />
        {leader !== null && <path className="leader-line" d={pathOf(leader)} />}
        <text
          className="name"
          x={squareName.anchor === 'start' ? squareName.box.left : squareName.box.right}
          y={squareName.box.bottom - 3}
          textAnchor={squareName.anchor}
        >
          square
        </text>
      </svg>
      <DimensionFigure {...figure} box={marks.figure.box} anchor={marks.figure.anchor} />
    </div>
  );
}
