import { useEffect, useRef, type ReactNode, type SVGAttributes } from 'react';
import type { Point } from '../../../../core/group/index.ts';
import { PhotoLoupe, type LoupeSource } from './PhotoLoupe.tsx';

interface Props extends Pick<SVGAttributes<SVGSVGElement>, 'aria-label'> {
  width: number;
  height: number;
  /** What is painted, and where in the stage [px]; null until it is there. */
  bitmap: ImageBitmap | null;
  at: { readonly left: number; readonly top: number; readonly width: number; readonly height: number };
  handlers: Pick<SVGAttributes<SVGSVGElement>, 'onKeyDown' | 'onPointerDown'>;
  /** The keyboard's cross and where the loupe looks [px]. */
  cross: Point | null;
  looking: Point | null;
  /** Two lines under the loupe. */
  said: readonly [string, string];
  /** What the loupe should not cover [px]. */
  marks: readonly Point[];
  /** Turning the wheel looks closer or wider about the pointer [px]. */
  onZoom?(factor: number, at: Point): void;
  data?: Readonly<Record<`data-${string}`, string | number>>;
  children: ReactNode;
}

const NONE = {};
/** A turn of the wheel that doubles what is seen [px]. */
const WHEEL = 300;

/** A picture that takes points: the bitmap on a canvas, what is drawn over it, and the loupe. */
export function Stage({
  width,
  height,
  bitmap,
  at,
  handlers,
  cross,
  looking,
  said,
  marks,
  onZoom,
  data = NONE,
  children,
  ...rest
}: Props) {
  const canvas = useRef<HTMLCanvasElement>(null);
  const target = useRef<SVGSVGElement>(null);
  // What had the focus is gone with the step before: whoever goes by keys goes on here.
  useEffect(() => {
    const here = document.activeElement;
    if (here === null || here === document.body || here instanceof HTMLDialogElement) target.current?.focus();
  }, []);
  useEffect(() => {
    const on = target.current;
    if (on === null || onZoom === undefined) return undefined;
    const turn = (event: WheelEvent) => {
      // Or the sheet would scroll away under it.
      event.preventDefault();
      const corner = on.getBoundingClientRect();
      onZoom(2 ** (-event.deltaY / WHEEL), { x: event.clientX - corner.left, y: event.clientY - corner.top });
    };
    on.addEventListener('wheel', turn, { passive: false });
    return () => on.removeEventListener('wheel', turn);
  }, [onZoom]);
  const ratio = window.devicePixelRatio;
  useEffect(() => {
    const on = canvas.current?.getContext('2d');
    if (on == null) return;
    on.setTransform(ratio, 0, 0, ratio, 0, 0);
    on.clearRect(0, 0, width, height);
    on.imageSmoothingQuality = 'high';
    if (bitmap !== null) on.drawImage(bitmap, at.left, at.top, at.width, at.height);
  }, [bitmap, at.left, at.top, at.width, at.height, width, height, ratio]);
  const source: LoupeSource | null = bitmap === null ? null : { bitmap, at };
  return (
    <div className="photo-stage" style={{ width, height }}>
      <canvas ref={canvas} width={Math.round(width * ratio)} height={Math.round(height * ratio)} style={{ width, height }} />
      <svg
        ref={target}
        width={width}
        height={height}
        role="application"
        tabIndex={0}
        className="photo-target"
        {...rest}
        {...data}
        {...handlers}
      >
        {children}
        {cross !== null && (
          <g className="key-cross" transform={`translate(${cross.x} ${cross.y})`}>
            <path className="case" d="M-14 0H-3M3 0H14M0 -14V-3M0 3V14" />
            <path d="M-14 0H-3M3 0H14M0 -14V-3M0 3V14" />
          </g>
        )}
        <rect className="frame-line" x="0.5" y="0.5" width={width - 1} height={height - 1} />
      </svg>
      {looking !== null && source !== null && (
        <PhotoLoupe source={source} width={width} height={height} at={looking} said={said} marks={marks} />
      )}
    </div>
  );
}
