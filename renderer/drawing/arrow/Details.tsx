import { useId, type ReactNode } from 'react';
import type { FigureProps } from '../../design/index.ts';
import { DimensionFigure } from '../dimension/DimensionFigure.tsx';
import { DimensionLine } from '../dimension/DimensionLine.tsx';
import { detail, type nockEnd } from './nockEnd.ts';
import type { shaftSection } from './section.ts';
import type { spineTester } from './tester.ts';

const Detail = ({ width, said, children, fields }: { width: number; said: string; children: ReactNode; fields: ReactNode }) => (
  <div className="arrow-drawing" style={{ width, height: detail.height }}>
    <svg width={width} height={detail.height} role="img" aria-label={said}>
      {children}
    </svg>
    {fields}
  </div>
);

interface NockEndProps {
  layout: ReturnType<typeof nockEnd>;
  material: string;
  known: Readonly<Record<'vaneFromThroat' | 'vaneLength', boolean>>;
  figures: Readonly<Record<'vaneFromThroat' | 'vaneLength' | 'vaneCount', FigureProps>>;
}

const spotOf = ({ box, anchor, lines }: NockEndProps['layout']['fields']['vaneCount']) => ({ box, anchor, lines });

/** The nock end enlarged: the fletching's place, length and number. */
export function NockEndDetail({ layout, material, known, figures }: NockEndProps) {
  const { fields, spans } = layout;
  const drawn = known.vaneFromThroat || known.vaneLength ? 'arrow-outline' : 'arrow-outline in-lead';
  return (
    <Detail
      width={layout.width}
      said={`The nock end, ${layout.ratio}: where the fletching begins, how long it is, how many vanes it has.`}
      fields={
        <>
          <DimensionFigure {...figures.vaneFromThroat} {...spotOf(fields.vaneFromThroat)} />
          <DimensionFigure {...figures.vaneLength} {...spotOf(fields.vaneLength)} />
          <DimensionFigure {...figures.vaneCount} {...spotOf(fields.vaneCount)} />
        </>
      }
    >
      <g className={drawn}>
        {layout.vanes.map((vane) => (
          <path key={vane} className="vane" d={vane} />
        ))}
        <path className={`shaft ${material}`} d={layout.shaft} />
        {layout.edgeVane !== null && <path className={`edge-vane ${material}`} d={layout.edgeVane} />}
        <path className="nock" d={layout.nock} />
      </g>
      <path className="inner" d={layout.cut} />
      <DimensionLine span={spans.vaneFromThroat} measured={known.vaneFromThroat} />
      <DimensionLine span={spans.vaneLength} measured={known.vaneLength} />
      <path className="leader-line" d={`${fields.vaneFromThroat.leader ?? ''}${fields.vaneLength.leader ?? ''}`} />
    </Detail>
  );
}

interface SectionProps {
  layout: ReturnType<typeof shaftSection>;
  known: Readonly<Record<'diameter' | 'wall', boolean>>;
  figures: Readonly<Record<'diameter' | 'wall', FigureProps>>;
}

/** The shaft cut across, hatched, with its diameter and the wall of a tube. */
export function SectionDetail({ layout, known, figures }: SectionProps) {
  const { x, y, radius, inner } = layout;
  const hatch = useId();
  const ring = (r: number) => `M${x - r} ${y}a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0Z`;
  const drawn = known.diameter ? 'shaft-section' : 'shaft-section in-lead';
  return (
    <Detail
      width={layout.width}
      said={`The shaft cut across, ${layout.ratio}${layout.wall === null ? ', solid' : ', a tube'}.`}
      fields={
        <>
          <DimensionFigure {...figures.diameter} {...layout.diameter} />
          {layout.wall !== null && <DimensionFigure {...figures.wall} {...layout.wall} />}
        </>
      }
    >
      <defs>
        <pattern id={hatch} width="5" height="5" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
          <path className="shaft-section-hatch" d="M0 0V5" />
        </pattern>
      </defs>
      <path className={drawn} d={`${ring(radius)}${inner > 0 ? ring(inner) : ''}`} fill={`url(#${hatch})`} fillRule="evenodd" />
      <path className="centre-line" d={`M${x - radius - 5} ${y}H${x + radius + 5}M${x} ${y - radius - 5}V${y + radius + 5}`} />
      <DimensionLine span={layout.diameterSpan} measured={known.diameter} />
      <path className="leader-line" d={layout.leader} />
      {layout.wallSpan !== null && <DimensionLine span={layout.wallSpan} measured={known.wall} />}
    </Detail>
  );
}

interface TesterProps {
  layout: ReturnType<typeof spineTester>;
  measured: boolean;
  figure: FigureProps;
}

/** The shaft on its tester, with the deflection as the dimension it is. */
export function TesterDetail({ layout, measured, figure }: TesterProps) {
  return (
    <Detail
      width={layout.width}
      said={`The shaft on its tester: ${layout.labels.map(({ text }) => text).join(', ')}. The sag is not to scale.`}
      fields={<DimensionFigure {...figure} {...layout.deflection} />}
    >
      <path className="centre-line" d={layout.line} />
      <DimensionLine span={layout.spanLine} measured />
      {layout.supports.map((support) => (
        <path key={support} className="tester-support" d={support} />
      ))}
      <path className={measured ? 'tester-shaft' : 'tester-shaft in-lead'} d={layout.shaft} />
      <path className="inner" d={layout.hook} />
      <path className="tester-weight" d={layout.weight} />
      <DimensionLine span={layout.span} measured={measured} />
      {layout.labels.map((one) => (
        <text key={one.text} className="tick" x={one.x} y={one.y} textAnchor={one.anchor}>
          {one.text}
        </text>
      ))}
    </Detail>
  );
}
