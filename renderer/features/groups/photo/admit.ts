import { ok, refuse, type Result } from '../../../../core/model/problem.ts';
import { pictureSize, type PictureSize } from './pictureSize.ts';

const MOST_MEGABYTES = 60;
/** Decoded, each takes four bytes: 400 MB while it is made smaller, and no longer. */
const MOST_MEGAPIXELS = 100;

const NONE = 'This file is no picture that can be read here: a JPEG, PNG, WebP, GIF or BMP was expected.';

/** Whether a picture may be decoded, judged by the size of its file and the size that its first bytes state. */
export function admit(fileBytes: number, head: Uint8Array): Result<PictureSize> {
  if (fileBytes > MOST_MEGABYTES * 1e6) {
    const sentence = `A picture of at most ${MOST_MEGABYTES} MB was expected; this one has ${Math.ceil(fileBytes / 1e6)} MB. Save it smaller.`;
    return refuse('too-large', sentence);
  }
  const size = pictureSize(head);
  if (size === null || size.width === 0 || size.height === 0) return refuse('no-picture', NONE);
  const megapixels = (size.width * size.height) / 1e6;
  if (megapixels > MOST_MEGAPIXELS) {
    const sentence = `A picture of at most ${MOST_MEGAPIXELS} megapixels was expected; this one has ${Math.ceil(megapixels)}. Save it smaller.`;
    return refuse('too-large', sentence);
  }
  return ok(size);
}

/** The header of a picture whose body cannot be decoded. */
export const broken = () => refuse('no-picture', `${NONE} It says it is one, but it is damaged or cut off.`);
