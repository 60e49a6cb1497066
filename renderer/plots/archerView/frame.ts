import type { ArcherViewData } from './data.ts';

/** Pixels: the picture's height, and what is kept free at its edges, over the butt for a dimension across, and below what is held. */
export const viewFrame = { height: 348, edge: 9, above: 24, overButt: 18, underTip: 76, underFoot: 30 } as const;

/** A butt is at least this wide and high, and its middle is the face's [m]: World Archery rule book. */
export const BUTT = 1.24;

/** Nothing is drawn so large that the arrow or the butt fills the picture [px]. */
const WIDEST_TIP = 30;
const WIDEST_BUTT = 176;
/** Of the height to spare this part is sky [-]. */
const SKY = 0.3;

/** How the eye's picture is laid on the page: pixels per unit of slope (aside or up, over ahead), the line straight ahead, and the horizon. */
export interface ViewScale {
  readonly scale: number;
  readonly ahead: number;
  readonly horizon: number;
}

/** What must stand free beside the butt, on the bow's side and on the other [px]. */
export interface Aside {
  readonly bow: number;
  readonly other: number;
}

/** How far up a place stands in the eye's picture: its height over the eye's level, over its distance. */
export const slopeOf = (data: ArcherViewData, aboveGround: number, distance = data.distance): number =>
  (aboveGround - data.eyeAboveGround) / distance;

/** The largest picture that holds target, ground and what is held, with the bow to the right. */
export function viewScale(data: ArcherViewData, width: number, aside: Aside): ViewScale {
  const { height, underTip, underFoot } = viewFrame;
  const above = viewFrame.above + (data.across === 0 ? 0 : viewFrame.overButt);
  const held = slopeOf(data, data.centreAboveGround + data.up.value);
  const foot = slopeOf(data, 0);
  const highest = slopeOf(data, data.centreAboveGround + data.up.high);
  const lowest = slopeOf(data, data.centreAboveGround + data.up.low);
  const top = Math.max(slopeOf(data, data.centreAboveGround + BUTT / 2), highest);
  const arrow = data.by.kind === 'tip';
  const butt = BUTT / data.distance;
  const scale = Math.min(
    (height - above - underFoot) / (top - foot),
    arrow ? (height - above - underTip) / (top - held + 1e-9) : Infinity,
    (height - above - underFoot) / (top - lowest + 1e-9),
    Math.min(WIDEST_BUTT, width - aside.bow - aside.other) / butt,
    data.by.kind === 'tip' ? (WIDEST_TIP * data.by.forward) / data.by.diameter : Infinity,
  );
  const low = Math.min(Math.min(foot, lowest) * scale - underFoot, arrow ? held * scale - underTip : Infinity);
  const spare = height - above - (top * scale - low);
  const half = (butt * scale) / 2;
  return {
    scale,
    ahead: Math.max(aside.other + half, Math.min(width - aside.bow - half, width / 2)),
    horizon: above + top * scale + SKY * spare,
  };
}
