import type { Point } from '../../../../core/group/index.ts';

/** The shot that is being pulled, alone: the others need not be drawn anew until it is let go. */
export function PulledShot({ at, radius, second }: { at: Point; radius: number; second: boolean }) {
  const r = Math.max(5, radius);
  return (
    <g className="pulled-shot" transform={`translate(${at.x} ${at.y})`}>
      <circle className="shot-chosen" r={r + 6} />
      {second ? (
        <path
          className="shot-diamond"
          d={`M0 ${-r * 1.25}l${r * 1.25} ${r * 1.25}l${-r * 1.25} ${r * 1.25}l${-r * 1.25} ${-r * 1.25}z`}
        />
      ) : (
        <>
          <circle className="shot-case" r={r + 1.6} />
          <circle className="shot-disc" r={r} />
        </>
      )}
    </g>
  );
}
