import { useMemo, useState, type PointerEvent } from 'react';
import { factorOf } from '../../../core/units/index.ts';
import { useSize } from '../../design/index.ts';
import { useUnits } from '../../state/useBench.ts';
import { Lettered } from '../Lettered.tsx';
import type { ArcherViewData } from './data.ts';
import { Dimensions } from './Dimensions.tsx';
import type { ViewScale } from './frame.ts';
import { Handle, type Move } from './Handle.tsx';
import { archerViewMarks } from './marks.ts';
import { Scene } from './Scene.tsx';
import { holdTexts } from './texts.ts';
import '../face/face.css';
import './archerView.css';

interface Props {
  data: ArcherViewData;
  /** The whole picture in a sentence, for those who hear it. */
  sentence: string;
  /** Lets the target be moved along the ground, by hand and by the arrow keys. */
  move?: Move;
}

/** Taken hold of: the picture keeps its scale, or it would slip away under the hand; and how far under the target's foot the hand is [px]. */
interface Held {
  readonly frame: ViewScale;
  readonly under: number;
}

/** What the archer sees: the target on the ground in perspective, and where the tip of the arrow or the pin of the sight is held against it. */
export function ArcherView({ data, sentence, move }: Props) {
  const units = useUnits();
  const [place, room] = useSize();
  const width = Math.max(240, Math.floor(room?.width ?? 320));
  const [held, setHeld] = useState<Held | null>(null);
  const texts = useMemo(() => holdTexts(data, units), [data, units]);
  const still = held?.frame ?? null;
  const marks = useMemo(() => archerViewMarks(data, width, units, texts, still), [data, width, units, texts, still]);
  const picture = (
    <>
      <Scene marks={marks} face={data.face} />
      <Dimensions marks={marks} />
      {marks.labels.map((one) => (
        <Lettered key={`${one.text} ${one.y}`} label={one} halo />
      ))}
    </>
  );
  if (move === undefined)
    return (
      <div ref={place} className="archer-view">
        <svg width={width} height={marks.height} role="img" aria-label={sentence}>
          {picture}
        </svg>
      </div>
    );

  const step = factorOf('distance', units);
  const onPointerMove = (event: PointerEvent<SVGSVGElement>) => {
    if (held === null) return;
    const { horizon, scale } = held.frame;
    const foot = event.clientY - event.currentTarget.getBoundingClientRect().top - held.under;
    const distance = foot - horizon <= 1 ? move.farthest : (data.eyeAboveGround * scale) / (foot - horizon);
    move.onDistance(Math.max(move.nearest, Math.min(move.farthest, Math.round(distance / step) * step)));
  };
  const onHold = (event: PointerEvent<SVGGElement>) => {
    const svg = event.currentTarget.ownerSVGElement;
    if (svg === null) return;
    svg.setPointerCapture(event.pointerId);
    setHeld({ frame: marks.frame, under: event.clientY - svg.getBoundingClientRect().top - marks.foot });
  };
  return (
    <div ref={place} className="archer-view">
      <svg
        width={width}
        height={marks.height}
        role="group"
        aria-label={sentence}
        onPointerMove={onPointerMove}
        onPointerUp={() => setHeld(null)}
        onPointerCancel={() => setHeld(null)}
      >
        <g aria-hidden="true">{picture}</g>
        <Handle
          marks={marks}
          move={move}
          distance={data.distance}
          step={step}
          says={sentence}
          held={held !== null}
          onHold={onHold}
        />
      </svg>
    </div>
  );
}
