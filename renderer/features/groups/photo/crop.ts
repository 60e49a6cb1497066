import { face, type Point } from '../../../../core/group/index.ts';
import type { FaceId } from '../../../../core/model/group.ts';
import { chained, toPicture, type Homography } from '../../../../core/photo/index.ts';
import type { PictureSize } from './pictureSize.ts';

/** A part of a picture, in its pixels. */
export interface Crop extends PictureSize {
  readonly left: number;
  readonly top: number;
}

/** Beyond the last ring as much again as a shot that misses the paper may need [of its radius]. */
const MARGIN = 1.2;
const SIDES = 64;

/** What of a photo is kept: the face and a little round it, and whatever shots lie farther out. */
export function cropOf(homography: Homography, id: FaceId, shots: readonly Point[], { width, height }: PictureSize): Crop {
  const radius = MARGIN * (face(id).rings[0]?.radius ?? 0);
  const round = Array.from({ length: SIDES }, (_, i): Point => {
    const angle = (2 * Math.PI * i) / SIDES;
    return { x: radius * Math.cos(angle), y: radius * Math.sin(angle) };
  });
  const seen = [...round, ...shots].map((point) => toPicture(homography, point));
  const xs = seen.map(({ x }) => x * width);
  const ys = seen.map(({ y }) => y * width);
  const within = (value: number, most: number) => Math.min(most, Math.max(0, value));
  const left = Math.floor(within(Math.min(...xs), width - 1));
  const top = Math.floor(within(Math.min(...ys), height - 1));
  return {
    left,
    top,
    width: Math.max(1, Math.ceil(within(Math.max(...xs), width)) - left),
    height: Math.max(1, Math.ceil(within(Math.max(...ys), height)) - top),
  };
}

/** How the face lies in the part, in widths of the part. */
export const homographyIn = (homography: Homography, crop: Crop, { width }: PictureSize): Homography => {
  const scale = width / crop.width;
  return chained([scale, 0, -crop.left / crop.width, 0, scale, -crop.top / crop.width, 0, 0, 1], homography);
};
