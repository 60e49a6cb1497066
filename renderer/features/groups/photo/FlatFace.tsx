import { useMemo, useState } from 'react';
import { scoreShot, type Face, type Point } from '../../../../core/group/index.ts';
import type { UnitChoice } from '../../../../core/model/preferences.ts';
import type { Homography } from '../../../../core/photo/index.ts';
import { showQuantity } from '../../../../core/units/index.ts';
import { scaleOf, toFace, toPixel, type FaceView } from '../../../plots/face/geometry.ts';
import { movedTo, wholeOf, zoomed } from './flatView.ts';
import { HoleMarks } from './HoleMarks.tsx';
import type { PhotoWork } from './messages.ts';
import { Stage } from './Stage.tsx';
import { useFlat } from './useFlat.ts';
import { usePointEntry } from './usePointEntry.ts';

interface Props {
  face: Face;
  homography: Homography;
  size: number;
  /** On the face [m], each with the number it will carry. */
  holes: readonly { readonly id: number; readonly place: Point; readonly arrow: number | null }[];
  shaftRadius: number;
  /** What the next click is: "shot 4 next". */
  next: string;
  units: UnitChoice;
  flat(ask: PhotoWork['flat']['ask']): Promise<ImageBitmap | null>;
  onAdd(at: Point): number | null;
  onMove(id: number, at: Point): void;
  onTake(id: number | null): void;
  onNumber(id: number, arrow: number | null): void;
}

/** As on the face of the screen itself [m]. */
const COARSE = 0.005;
const FINE = 0.001;

/** The face of the photo as seen straight on, under the rings it should have: each click is a hole. */
export function FlatFace({ face, homography, size, holes, shaftRadius, next, units, flat, ...on }: Props) {
  const whole = useMemo(() => wholeOf(face.rings[0]?.radius ?? 0.2, size), [face, size]);
  const [window, setWindow] = useState<Pick<FaceView, 'middle' | 'half'>>(whole);
  const view = useMemo(() => ({ ...window, size }), [window, size]);
  const k = scaleOf(view);
  const radius = Math.max(6, shaftRadius * k);
  const { bitmap, at } = useFlat(homography, view, flat);
  const held = ({ x, y }: Point): Point => ({
    x: Math.max(-whole.half, Math.min(whole.half, x)),
    y: Math.max(-whole.half, Math.min(whole.half, y)),
  });
  const entry = usePointEntry({
    marks: holes.map(({ id, place }) => ({ id, x: place.x, y: place.y })),
    radius,
    toPlane: (pixel) => toFace(view, pixel),
    toPixel: (point) => toPixel(view, point),
    coarse: COARSE,
    fine: FINE,
    up: 1,
    start: { x: 0, y: 0 },
    held,
    ...on,
    onCross: (point) => setWindow(movedTo(view, whole, point)),
    onZoom: (factor, about) => setWindow(zoomed(view, whole, factor, about)),
  });
  const zoom = (factor: number) => {
    const chosen = holes.find(({ id }) => id === entry.chosen) ?? holes.at(-1);
    setWindow(zoomed(view, whole, factor, entry.cross ?? chosen?.place ?? { x: 0, y: 0 }));
  };
  const centre = toPixel(view, { x: 0, y: 0 });
  const looking = entry.at === null ? null : toPixel(view, entry.at);
  const figure = (value: number) => showQuantity(value, 'setting', units, { signed: true }).figure;
  const score = entry.at === null ? null : scoreShot(entry.at, shaftRadius, face);
  const said = (point: Point) => `${figure(point.x)}, ${figure(point.y)} ${units.setting}`;
  const drawn = holes.map(({ id, place, arrow }) => ({ id, arrow, at: toPixel(view, place) }));
  return (
    <>
      <div className="photo-tools">
        <button type="button" className="link" aria-keyshortcuts="+" onClick={() => zoom(2)}>
          Closer
        </button>
        <button type="button" className="link" aria-keyshortcuts="-" onClick={() => zoom(0.5)}>
          Wider
        </button>
        <span className="faint">
          {holes.length === 0 ? 'Click each hole.' : `${holes.length} ${holes.length === 1 ? 'hole' : 'holes'} marked.`}
        </span>
      </div>
      <Stage
        width={size}
        height={size}
        bitmap={bitmap}
        at={at}
        handlers={entry.handlers}
        cross={entry.cross === null ? null : toPixel(view, entry.cross)}
        looking={looking}
        said={
          entry.at === null || score === null
            ? ['', '']
            : [said(entry.at), `${score.points === 0 ? 'off the rings' : `ring ${score.points}`}; ${next}`]
        }
        marks={drawn.map((hole) => hole.at)}
        onZoom={(factor, pixel) => setWindow(zoomed(view, whole, factor, toFace(view, pixel)))}
        aria-label={`The straightened face. ${holes.length} holes are marked. Arrow keys move the cross, Enter marks a hole, digits number it and 0 takes the number off, Backspace takes it out, plus and minus look closer and wider.`}
        data={{
          'data-half': view.half,
          'data-middle': `${view.middle.x} ${view.middle.y}`,
          'data-shown': bitmap === null ? 'no' : 'yes',
        }}
      >
        {face.rings.map(({ points, radius }) => (
          <g key={points} className="photo-ring">
            <circle className="case" cx={centre.x} cy={centre.y} r={radius * k} />
            <circle cx={centre.x} cy={centre.y} r={radius * k} />
          </g>
        ))}
        <HoleMarks holes={drawn} radius={radius} width={size} height={size} chosen={entry.chosen} />
      </Stage>
      <p className="heard" role="status">
        {entry.cross !== null ? `Cross at ${said(entry.cross)}` : ''}
      </p>
    </>
  );
}
