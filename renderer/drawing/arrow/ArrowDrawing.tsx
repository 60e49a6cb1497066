import { useMemo } from 'react';
import type { PartName } from '../../../core/arrow/index.ts';
import type { FigureProps } from '../../design/index.ts';
import type { Label } from '../../plots/labels.ts';
import { DimensionFigure } from '../dimension/DimensionFigure.tsx';
import { DimensionLine } from '../dimension/DimensionLine.tsx';
import type { arrowLayout } from './layout.ts';
import '../dimension/dimension.css';
import './arrowDrawing.css';

type DrawnField = 'length' | 'balance' | PartName;

interface Props {
  layout: ReturnType<typeof arrowLayout>;
  figures: Readonly<Record<DrawnField, FigureProps>>;
}

const Words = ({ of, className }: { of: Label; className: string }) => (
  <text className={className} x={of.x} y={of.y} textAnchor={of.anchor}>
    {of.text}
  </text>
);

/** The arrow to scale with its dimensions over it and its masses under it. What has been measured is in ink, the rest in pencil. */
export function ArrowDrawing({ layout, figures }: Props) {
  const { picture, scale, dimensions, masses, massY, arrowY, height, shapes } = layout;
  const balanceAt = picture.balance === null ? null : scale.at(picture.balance.at);
  const said = useMemo(() => describe(layout), [layout]);
  // A small dot beside a large one is drawn over it, so that both are seen.
  const largestFirst = useMemo(() => [...masses].sort((a, b) => b.radius - a.radius), [masses]);
  return (
    <div className="arrow-drawing" style={{ width: scale.width, height }}>
      <svg width={scale.width} height={height} role="img" aria-label={said}>
        <path className="centre-line" d={dimensions.middle} />
        <DimensionLine span={dimensions.length.span} measured={picture.lengthKnown} />
        {dimensions.balance.span !== null && (
          <DimensionLine span={dimensions.balance.span} measured={picture.balance?.measured ?? false} />
        )}
        {dimensions.foc.map((line) => (
          <Words
            key={line.text}
            className={line.lettering === 'name' ? 'name' : `foc ${picture.balance?.measured === true ? '' : 'pencilled'}`}
            of={line}
          />
        ))}
        <Outline layout={layout} />
        {balanceAt !== null && (
          <>
            <path
              className={picture.balance?.measured === true ? 'arrow-edge' : 'arrow-edge pencilled'}
              d={`M${balanceAt} ${arrowY + shapes.halfThick + 2}l5 9h-10z`}
            />
            <path className="construction" d={`M${balanceAt} ${arrowY + shapes.halfThick + 12}V${massY}`} />
          </>
        )}
        <path
          className="mass-line"
          d={`M${scale.at(0)} ${massY}H${scale.at(picture.length)}`}
          style={{ strokeWidth: layout.shaftStroke }}
        />
        {largestFirst.map(({ part, x, radius, leader, more }) => (
          <g key={part.name}>
            <path className="leader-line" d={leader} />
            {part.name === 'shaft' ? (
              <path className="mass-tick" d={`M${x} ${massY - 6}v12`} />
            ) : (
              <circle className={part.mass === null ? 'mass-dot pencilled' : 'mass-dot'} cx={x} cy={massY} r={radius} />
            )}
            {more !== null && <Words className="tick" of={more} />}
          </g>
        ))}
      </svg>
      <DimensionFigure {...figures.length} box={dimensions.length.box} anchor="middle" />
      <DimensionFigure {...figures.balance} box={dimensions.balance.box} anchor="middle" />
      {masses.map(({ part, box }) => (
        <DimensionFigure key={part.name} {...figures[part.name]} box={box} anchor="middle" />
      ))}
    </div>
  );
}

/** The arrow itself. */
function Outline({ layout: { picture, shapes } }: { layout: Props['layout'] }) {
  const drawn = picture.lengthKnown ? 'arrow-outline' : 'arrow-outline in-lead';
  return (
    <g className={drawn}>
      <path className="centre-line" d={shapes.centre} />
      {shapes.vanes.map((vane) => (
        <path key={vane} className="vane" d={vane} />
      ))}
      <path className={`shaft ${picture.material}`} d={shapes.shaft} />
      {shapes.wrap !== null && <path className="wrap" d={shapes.wrap} />}
      {shapes.edgeVane !== null && <path className={`edge-vane ${picture.material}`} d={shapes.edgeVane} />}
      <path className="nock" d={shapes.nock} />
      {shapes.insert !== null && <path className={`insert ${picture.material}`} d={shapes.insert} />}
      <path className="point" d={shapes.point} />
    </g>
  );
}

function describe({ picture, scale, masses }: Props['layout']): string {
  const weighed = masses.filter(({ part }) => part.mass !== null && part.mass > 0).map(({ part }) => part.name);
  const parts = weighed.length === 0 ? 'No part is weighed yet.' : `Weighed: ${weighed.join(', ')}.`;
  return `The arrow from its side, ${picture.lengthKnown ? `${scale.ratio} of its length` : 'in pencil until its length is measured'}, the nock to the left. ${parts} Each dot’s area goes with its mass.`;
}
