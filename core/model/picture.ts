import { z } from './zod.ts';
import { Id, recordBase } from './common.ts';

/** A point of a picture, from its left top corner, in widths of the picture: the same whatever size it is stored at. */
export const PicturePoint = z.strictObject({ x: z.number().min(-1).max(2), y: z.number().min(-1).max(4) });
export type PicturePoint = z.infer<typeof PicturePoint>;

/** More than a small picture needs; a larger one is made smaller before it is kept. */
export const MOST_PICTURE_BYTES = 400_000;

/** A photo of a target, stored small, and how the face lies in it. The shots read off it are the group's own. */
export const Picture = z.strictObject({
  ...recordBase,
  kind: z.literal('picture'),
  groupId: Id,
  /** JPEG in base 64. */
  jpeg: z
    .base64('A picture as base 64 was expected.')
    .max(Math.ceil((MOST_PICTURE_BYTES * 4) / 3) + 4, 'A picture of at most 400 kB was expected.'),
  width: z.int().min(1).max(4000),
  height: z.int().min(1).max(4000),
  /** Row by row: takes a point of the face [m, x right, y up] to one of the picture [widths, y down], up to a factor. */
  homography: z.array(z.number()).length(9),
  /** How far the marked rings lie from where the face would have them, root mean square [m]. */
  residual: z.number().nonnegative().max(1),
});
export type Picture = z.infer<typeof Picture>;
