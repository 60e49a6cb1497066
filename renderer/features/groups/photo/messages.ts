import type { FaceId } from '../../../../core/model/group.ts';
import type { PicturePoint } from '../../../../core/model/picture.ts';
import type { Result } from '../../../../core/model/problem.ts';
import type { FoundRings, Homography, Progress } from '../../../../core/photo/index.ts';
import type { Crop } from './crop.ts';
import type { PictureSize } from './pictureSize.ts';

/** What the page asks of its worker, and what each comes to. The picture's pixels stay with the worker. */
export interface PhotoWork {
  /** Decodes a file, once, to what is worked on; the bitmap is for the eye. */
  open: { ask: Blob; answer: Result<PictureSize & { readonly bitmap: ImageBitmap }> };
  find: { ask: { readonly face: FaceId; readonly near: PicturePoint | null }; answer: Result<FoundRings> };
  /** The face seen straight on, in a square of so many pixels about the centre that the homography has. */
  flat: {
    ask: { readonly homography: Homography; readonly half: number; readonly pixels: number };
    answer: ImageBitmap;
  };
  /** A part of the picture as a small JPEG in base 64. */
  small: { ask: Crop; answer: PictureSize & { readonly jpeg: string } };
}

type Kind = keyof PhotoWork;

export type Ask = { [K in Kind]: { readonly id: number; readonly kind: K; readonly ask: PhotoWork[K]['ask'] } }[Kind];

export type Reply =
  | { readonly id: number; readonly progress: Progress }
  | { readonly id: number; readonly answer: PhotoWork[Kind]['answer'] }
  /** A fault of ours: whoever asked is told that it failed. */
  | { readonly id: number; readonly fault: string };
