import type { UnitChoice } from '../../../core/model/preferences.ts';
import { textQuantity } from '../../../core/units/index.ts';
import type { Box } from '../boxes.ts';
import type { Label } from '../labels.ts';
import { textWidth } from '../textWidth.ts';
import { arrowSeen } from './arrowSeen.ts';
import type { ArcherViewData } from './data.ts';
import { BUTT, slopeOf, viewFrame, viewScale, type ViewScale } from './frame.ts';
import { groundLines } from './groundLines.ts';
import { lettering, type HoldTexts } from './lettering.ts';
import type { Placed } from './placed.ts';
import { standSeen } from './stand.ts';

/** Pixels beside the butt: to the dimension, its figure, and the bow with what is written beyond it. */
const APART = { dimension: 16, figure: 9, string: 4, bow: 10, bowWidth: 26, beyond: 6 } as const;

export interface ArcherViewMarks extends Placed {
  readonly labels: readonly Label[];
}

/** The ring of a pin stands clear of the bow [px]. */
const PIN = 20;
/** A hold nearer to the centre than this is not dimensioned, an interval shorter than this not drawn [px]. */
const LEAST = 5;
/** How large a marker is laid [m], and how small it may be drawn [px]. */
const MARKER = 0.12;

/** The picture that the archer's eye has of the target, the ground and what is held; `still` keeps the scale of an earlier one while the target moves. */
export function archerViewMarks(
  data: ArcherViewData,
  width: number,
  units: UnitChoice,
  texts: HoldTexts,
  still: ViewScale | null = null,
): ArcherViewMarks {
  const { height, edge } = viewFrame;
  const figures = [textWidth(texts.figure, 16, 'strong'), textWidth(texts.band, 13, 'note'), textWidth(texts.side, 13, 'name')];
  const here = textQuantity(data.distance, 'distance', units);
  const lane = Math.max(textWidth(here, 14, 'strong'), 34);
  const frame =
    still ??
    viewScale(data, width, {
      bow: APART.bow + APART.bowWidth + APART.beyond + lane + edge,
      other: edge + Math.max(...figures) + APART.figure + APART.dimension,
    });
  const { scale, ahead, horizon } = frame;
  const per = scale / data.distance;
  const yOf = (slope: number) => horizon - slope * scale;
  const mirrored = data.hand === 'left';
  const across = mirrored ? -data.across : data.across;

  const side = BUTT * per;
  const centre = { x: ahead, y: yOf(slopeOf(data, data.centreAboveGround)) };
  const butt = { x: ahead - side / 2, y: centre.y - side / 2, side };
  const held = { x: ahead + across * per, y: centre.y - data.up.value * per };
  const arrow = data.by.kind === 'tip' ? arrowSeen(data.by, scale, horizon, held, height) : null;
  const foot = yOf(slopeOf(data, 0));
  const beside = Math.max(side / 2, arrow === null ? held.x - ahead + PIN : arrow.half + 14);
  const farthest = width - edge - lane - APART.beyond - APART.bowWidth;
  const bow = { x: Math.min(ahead + beside + APART.bow, farthest), width: APART.bowWidth };
  const interval = {
    x: arrow === null ? held.x - PIN : held.x + arrow.half + 8,
    low: centre.y - data.up.low * per,
    high: centre.y - data.up.high * per,
  };
  const dimension = Math.abs(held.y - centre.y) < LEAST ? null : { x: butt.x - APART.dimension, from: centre.y, to: held.y };
  const sideways = Math.abs(held.x - centre.x) < LEAST ? null : { y: butt.y - 12, from: centre.x, to: held.x };
  const marker = data.marker === null ? null : markerSeen(data, data.marker.value, frame);
  const lines = groundLines(data, frame, height, units);

  const marks: Placed = {
    width,
    height,
    frame,
    mirrored,
    butt,
    centre,
    faceSize: 2 * (data.face.rings[0]?.radius ?? 0.4) * per,
    stand: standSeen(frame, data.distance, data.eyeAboveGround, data.centreAboveGround, height),
    ground: lines,
    foot,
    bow,
    string: { x: ahead + Math.max(beside - APART.string, (arrow?.half ?? 0) + 12), width: 5 },
    held,
    arrow,
    marker,
    dimension,
    sideways,
    interval: interval.low - interval.high < LEAST ? null : interval,
  };
  const labels = lettering(marks, texts, here);
  return { ...marks, labels: mirrored ? labels.map((one) => turned(one, width)) : labels };
}

function markerSeen({ eyeAboveGround }: ArcherViewData, distance: number, { scale, ahead, horizon }: ViewScale) {
  const nearer = (MARKER * scale) / distance;
  return {
    x: ahead,
    y: horizon + (eyeAboveGround * scale) / distance,
    rx: Math.max(9, nearer),
    ry: Math.max(2.4, (nearer * eyeAboveGround) / distance),
  };
}

const opposite = { start: 'end', middle: 'middle', end: 'start' } as const;

/** The same text in the mirrored picture: it changes sides, not its letters. */
function turned(one: Label, width: number): Label {
  const box: Box = { ...one.box, left: width - one.box.right, right: width - one.box.left };
  return { ...one, x: width - one.x, anchor: opposite[one.anchor], box };
}
