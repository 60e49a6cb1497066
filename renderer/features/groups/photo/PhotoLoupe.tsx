import { useEffect, useRef } from 'react';
import type { Point } from '../../../../core/group/index.ts';
import { loupeCorner, SIDE } from './loupeCorner.ts';

export interface LoupeSource {
  readonly bitmap: ImageBitmap;
  /** Where the bitmap lies on the stage [px]. */
  readonly at: { readonly left: number; readonly top: number; readonly width: number; readonly height: number };
}

interface Props {
  source: LoupeSource;
  width: number;
  height: number;
  at: Point;
  said: readonly [string, string];
  marks: readonly Point[];
}

/** How much larger it shows. */
const POWER = 4;

/** The picture under the pointer, larger, with the place it would be. */
export function PhotoLoupe({ source: { bitmap, at: lies }, width, height, at, said, marks }: Props) {
  const canvas = useRef<HTMLCanvasElement>(null);
  const ratio = window.devicePixelRatio;
  const corner = loupeCorner(width, height, at, marks);
  useEffect(() => {
    const on = canvas.current?.getContext('2d');
    if (on == null) return;
    const scale = POWER * ratio;
    const middle = (SIDE / 2) * ratio;
    on.setTransform(1, 0, 0, 1, 0, 0);
    on.clearRect(0, 0, SIDE * ratio, SIDE * ratio);
    on.setTransform(scale, 0, 0, scale, middle - at.x * scale, middle - at.y * scale);
    on.drawImage(bitmap, lies.left, lies.top, lies.width, lies.height);
  }, [bitmap, lies.left, lies.top, lies.width, lies.height, at.x, at.y, ratio]);
  const arm = `M0 ${SIDE / 2}H${SIDE / 2 - 7}M${SIDE / 2 + 7} ${SIDE / 2}H${SIDE}M${SIDE / 2} 0V${SIDE / 2 - 7}M${SIDE / 2} ${SIDE / 2 + 7}V${SIDE}`;
  return (
    <div className="photo-loupe" style={{ left: corner.x, top: corner.y, width: SIDE + 2 }} aria-hidden="true">
      <canvas ref={canvas} width={SIDE * ratio} height={SIDE * ratio} style={{ width: SIDE, height: SIDE }} />
      <svg width={SIDE} height={SIDE}>
        <path className="loupe-cross-case" d={arm} />
        <path className="loupe-line" d={arm} />
      </svg>
      <p>
        <strong>{said[0]}</strong>
        <br />
        {said[1]}
      </p>
    </div>
  );
}
