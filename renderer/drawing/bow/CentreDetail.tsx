import { useId } from 'react';
import type { DrawnFigure } from './BowDrawing.tsx';
import { DimensionFigure, DimensionLine } from '../dimension/index.ts';
import { pathOf } from '../path.ts';
import type { CentreDetail as Marks } from './details.ts';
import type { DrawnBow } from './figures.ts';

/** B: the shaft from behind beside the string's line, with what it leans on cut and hatched. */
export function CentreDetail({ marks, figure, bow }: { marks: Marks; figure: DrawnFigure; bow: DrawnBow }) {
  const hatch = useId();
  const { width, height, string, read, meets, radius, middle, line, x } = marks;
  const [wall, top, bottom] = marks.wall;
  const at = (places: readonly (readonly [number, number])[], closed = false) =>
    pathOf(
      places.map(([px, py]) => [x(px), py] as const),
      closed,
    );
  const elsewhere = Math.abs(read - meets) > 1;
  const edge = meets + radius;
  return (
    <div className="detail-sheet" style={{ width, height }}>
      <svg width={width} height={height} aria-hidden="true" className={bow.measured.centre ? undefined : 'in-lead'}>
        <defs>
          <pattern id={hatch} width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
            <path className="cut-line" d="M0 0V6" />
          </pattern>
        </defs>
        {bow.pass === 'rest and button' ? (
          <>
            <path
              fill={`url(#${hatch})`}
              d={at(
                [
                  [wall, top],
                  [width - 2, top],
                  [width - 2, bottom],
                  [wall, bottom],
                ],
                true,
              )}
            />
            <path
              className="bow-part outline line"
              d={at([
                [width - 2, top],
                [wall, top],
                [wall, bottom],
                [width - 2, bottom],
              ])}
            />
            <path
              className="bow-part inner metal"
              d={at(
                [
                  [edge, middle - 7],
                  [wall + 12, middle - 7],
                  [wall + 12, middle + 7],
                  [edge, middle + 7],
                ],
                true,
              )}
            />
            <path
              className="rest-wire"
              d={at([
                [wall, middle + radius + 1.6],
                [meets - radius * 0.75, middle + radius + 1.6],
                [meets - radius * 0.95, middle + radius - 3],
              ])}
            />
          </>
        ) : (
          <Handle marks={marks} hatch={hatch} shelf={bow.pass === 'shelf'} />
        )}
        {elsewhere && <circle className="construction" cx={x(meets)} cy={middle} r={radius} />}
        <circle className="bow-part outline hole" cx={x(read)} cy={middle} r={radius} />
        <circle className="bow-part inner line" cx={x(read)} cy={middle} r={radius * 0.68} />
        <path
          className="centre-line"
          d={at([
            [read - radius - 7, middle],
            [read + radius + 5, middle],
          ])}
        />
        <path
          className="centre-line"
          d={at([
            [read, middle - radius - 7],
            [read, line + 5],
          ])}
        />
        <path
          className="centre-line of-string"
          d={at([
            [string, 4],
            [string, line + 5],
          ])}
        />
        <DimensionLine span={marks.dimension} measured={bow.measured.centre} />
      </svg>
      <DimensionFigure {...figure} box={marks.figure.box} anchor={marks.figure.anchor} />
    </div>
  );
}

/** A handle cut past the shaft, with the shelf that carries it; or uncut, with the hand under the shaft. */
function Handle({ marks, hatch, shelf }: { marks: Marks; hatch: string; shelf: boolean }) {
  const { width, meets, radius, middle, x } = marks;
  const [, top, bottom] = marks.wall;
  const [edge, under, out] = [meets + radius + 1, middle + radius + 1, meets - radius - 8];
  const right = width - 2;
  const cut: readonly (readonly [number, number])[] = shelf
    ? [
        [right, top],
        [edge, top],
        [edge, under],
        [out, under],
        [out, bottom],
      ]
    : [
        [right, top],
        [edge, top],
        [edge, bottom],
      ];
  const at = (places: readonly (readonly [number, number])[], closed = false) =>
    pathOf(
      places.map(([px, py]) => [x(px), py] as const),
      closed,
    );
  return (
    <>
      <path fill={`url(#${hatch})`} d={at([...cut, [right, bottom]], true)} />
      <path className="bow-part outline line" d={at(cut)} />
      {!shelf && (
        <path
          className="bow-part inner line"
          d={`M${x(edge)} ${under + 1}Q${x(meets - radius - 6)} ${under - 1} ${x(meets - radius - 12)} ${Math.min(bottom, under + 15)}`}
        />
      )}
    </>
  );
}
