import { useMemo, type ReactNode } from 'react';
import type { FigureProps } from '../../design/index.ts';
import { DimensionFigure, DimensionLine } from '../dimension/index.ts';
import { pathOf } from '../path.ts';
import { BehindView } from './BehindView.tsx';
import type { DrawnBow } from './figures.ts';
import { bowLayout } from './layout.ts';
import { onDrawing, type BowTexts, type OnDrawing } from './standing.ts';
import { SideView } from './SideView.tsx';
import './bowDrawing.css';

export interface DrawnFigure extends FigureProps {
  /** Its name as it is written on the drawing, line by line. */
  readonly lines: readonly string[];
  readonly note?: string | undefined;
  readonly level?: 'caution' | 'stop' | undefined;
}

interface Props {
  bow: DrawnBow;
  texts: BowTexts;
  figures: Readonly<Record<OnDrawing, DrawnFigure>>;
  width: number;
  height: number;
  /** What is set and not drawn: it stands on the free ground beside the lower limb. */
  corner?: ReactNode;
}

const spans = ['string', 'upper', 'arrow', 'brace', 'lower', 'length'] as const;

/** A scale drawing of one bow, from the arrow's side and from behind, whose dimensions are the form. */
export function BowDrawing({ bow, texts, figures, width, height, corner }: Props) {
  const layout = useMemo(() => bowLayout(bow, texts, width, height), [bow, texts, width, height]);
  const { keys, band, leaders, dimensions } = layout;
  const right = bow.hand === 'right';
  const free = layout.corner;
  const behind = right ? ({ x: width - 2, anchor: 'end' } as const) : ({ x: 0, anchor: 'start' } as const);
  const side = right ? ({ x: 0, anchor: 'start' } as const) : ({ x: width - 2, anchor: 'end' } as const);
  const said = `A ${bow.kind}, braced, drawn 1 : ${layout.scale} from the arrow’s side, its target to the ${right ? 'left' : 'right'}, and from behind along the string.`;
  return (
    <div className="bow-drawing" style={{ width, height }}>
      <svg width={width} height={height} role="img" aria-label={said}>
        <text className="drawing-plate" x={side.x} y="16" textAnchor={side.anchor}>
          From the arrow’s side
        </text>
        <text className="name" x={side.x} y="34" textAnchor={side.anchor}>
          {`target to the ${right ? 'left' : 'right'}, 1 : ${layout.scale}`}
        </text>
        <text className="drawing-plate" x={behind.x} y="16" textAnchor={behind.anchor}>
          Along the string
        </text>
        <text className="name" x={behind.x} y="34" textAnchor={behind.anchor}>
          from behind
        </text>
        <SideView bow={bow} layout={layout} />
        <BehindView bow={bow} layout={layout} />
        {band !== null && (
          <g className="maker-band">
            <path className="out-to-it" d={pathOf(layout.bandReach)} />
            <rect x={band.left} y={band.top} width={band.right - band.left} height={band.bottom - band.top} />
            <path
              d={pathOf([
                [band.left, band.top],
                [band.left, band.bottom],
              ])}
            />
            <path
              d={pathOf([
                [band.right, band.top],
                [band.right, band.bottom],
              ])}
            />
          </g>
        )}
        {spans.map((which) => (
          <DimensionLine key={which} span={dimensions[which]} measured={bow.measured[which]} />
        ))}
        {leaders.map((line) => (
          <path key={line.join(' ')} className="leader-line" d={pathOf(line)} />
        ))}
        {(['A', 'B'] as const).map((key) => {
          const { box, ring } = keys[key];
          return (
            <g key={key}>
              <circle className="dim-line" cx={ring[0]} cy={ring[1]} r={ring[2]} />
              <text className="drawing-plate" x={(box.left + box.right) / 2} y={box.bottom - 4} textAnchor="middle">
                {key}
              </text>
            </g>
          );
        })}
      </svg>
      {onDrawing.map((which) => (
        <DimensionFigure key={which} {...figures[which]} box={layout.figures[which].box} anchor={layout.figures[which].anchor} />
      ))}
      {free !== null && corner !== undefined && (
        <div
          className="drawing-corner"
          style={{
            left: free.left,
            width: free.right - free.left,
            bottom: layout.height - free.bottom,
            maxHeight: free.bottom - free.top,
          }}
        >
          {corner}
        </div>
      )}
    </div>
  );
}
