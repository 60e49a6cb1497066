import { arrowMass } from '../../arrow/index.ts';
import { ok, refuse, type Bundle, type Result, type SpeedReading } from '../../model/index.ts';
import { given } from '../../model/given.ts';
import { inch } from '../../units/exact.ts';

/** The speeds of a set-up's arrows, and the set-up as it was when they were read. */
export interface SpeedRows {
  readonly rows: readonly SpeedReading[];
  /** With the brace height and the draw that the speeds were read at. */
  readonly then: Bundle;
  /** Whether either has been altered since. */
  readonly moved: boolean;
  /** Whether the set-up's own measured speed counts as one more. */
  readonly own: 'counts' | 'there already' | 'read at another brace or draw' | 'none';
}

/** A brace height nearer than this [m], or a draw, is the same one. */
const SAME = { brace: 0.0015, draw: 0.25 * inch } as const;
/** The same arrow written down twice [kg], [m/s]. */
const TWICE = { mass: 0.0001, speed: 0.05 } as const;

/**
 * Every speed that was read of this bow with this archer: arrows over the chronograph, and the set-up's own arrow.
 *
 * @equation the chronograph's readings at their brace height and draw; the measured speed of the set-up's arrow, of the mass and at the brace height that it was measured with, among them where these are the same
 * @param bundle - the set-up with its records [record]
 * @returns masses [kg] and speeds [m/s], and the set-up as it was then [record]
 * @validity refused for a figure outside the model's limits, and without any speed; a set-up's own speed without its arrow's mass is not counted; an arrow or a brace height that was not noted with it is taken to be the present one
 * @source own derivation
 * @example speedRows({ ...exampleBundle, setup: { ...exampleBundle.setup, settings: { ...exampleBundle.setup.settings, arrowSpeed: 55 } } }).value.own // "counts"
 */
export function speedRows(bundle: Bundle): Result<SpeedRows> {
  const { archer, setup, arrowSet } = bundle;
  const { settings, chronograph, chronographBrace, chronographDraw } = setup;
  for (const { mass, speed } of chronograph) {
    const reading = given('the virtual mass', { arrowMass: mass, arrowSpeed: speed });
    if (!reading.ok) return reading;
  }
  const apart = (then: number | null, now: number | null, same: number) =>
    then !== null && now !== null && Math.abs(then - now) > same;
  // The set-up's own speed keeps the arrow and the brace height that it was measured with, since both may be altered after it.
  const alone = chronograph.length === 0 && settings.arrowSpeed !== null;
  const brace = (alone ? settings.speedBrace : chronographBrace) ?? settings.braceHeight;
  const drawMoved = chronograph.length > 0 && apart(chronographDraw, archer.drawLength, SAME.draw);
  const moved = (alone || chronograph.length > 0) && (apart(brace, settings.braceHeight, SAME.brace) || drawMoved);
  const then: Bundle = !moved
    ? bundle
    : {
        ...bundle,
        archer: { ...archer, drawLength: chronographDraw ?? archer.drawLength },
        setup: { ...setup, settings: { ...settings, braceHeight: brace } },
      };
  const weighed = settings.arrowSpeed === null || settings.speedMass !== null ? null : arrowMass(arrowSet);
  const timed = settings.speedMass ?? (weighed?.ok === true ? weighed.value.mass : null);
  const read =
    settings.arrowSpeed === null || timed === null
      ? null
      : given('the virtual mass', { arrowMass: timed, arrowSpeed: settings.arrowSpeed });
  const own = read?.ok === true ? { mass: read.value.arrowMass, speed: read.value.arrowSpeed } : null;
  const twice =
    own !== null &&
    chronograph.some((row) => Math.abs(row.mass - own.mass) <= TWICE.mass && Math.abs(row.speed - own.speed) <= TWICE.speed);
  const counts = own !== null && !twice && !drawMoved && !apart(settings.speedBrace ?? settings.braceHeight, brace, SAME.brace);
  // In order, so that the order in which they were noted changes nothing, down to the last digit.
  const rows = [...chronograph, ...(counts ? [own] : [])].sort((a, b) => a.mass - b.mass || a.speed - b.speed);
  if (rows.length === 0)
    return refuse(
      'missing',
      'No arrow of known mass has been shot over a chronograph yet. Enter the mass and speed of one, better of three that differ.',
      'chronograph',
    );
  return ok({
    rows,
    then,
    moved,
    own: own === null ? 'none' : twice ? 'there already' : counts ? 'counts' : 'read at another brace or draw',
  });
}
