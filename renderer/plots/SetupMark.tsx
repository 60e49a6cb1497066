import './setupMark.css';

/** A set-up is told by colour, dash and mark together; this is the mark: 0 a disc, 1 an open diamond. */
export type SetupNumber = 0 | 1;

export function SetupMark({ setup, x, y, size = 6 }: { setup: SetupNumber; x: number; y: number; size?: number }) {
  return setup === 0 ? (
    <circle className="setup-mark s1" cx={x} cy={y} r={size - 0.8} />
  ) : (
    <path className="setup-mark s2" d={`M${x} ${y - size}l${size} ${size}l${-size} ${size}l${-size} ${-size}z`} />
  );
}

/** Mark and line as they are drawn in the plots, beside the set-up's name. */
export function SetupKey({ setup }: { setup: SetupNumber }) {
  return (
    <svg className="setup-key" width="44" height="16" aria-hidden="true">
      <path className={`setup-line s${setup + 1}`} d="M16 8H44" />
      <SetupMark setup={setup} x={7} y={8} />
    </svg>
  );
}
