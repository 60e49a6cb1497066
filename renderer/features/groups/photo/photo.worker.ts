import { face } from '../../../../core/group/faces.ts';
import { ok } from '../../../../core/model/problem.ts';
import { findRings, finished, straightened, type Pixels, type Steps } from '../../../../core/photo/index.ts';
import { admit, broken } from './admit.ts';
import type { Ask, PhotoWork, Reply } from './messages.ts';

/** Longest side of the picture worked on: 2400 pixels are more than a screen shows of a face. */
const MOST = 2400;
/** Header and camera's notes of a file. */
const HEAD = 1_000_000;
/** A picture kept with a group [bytes]. */
const KEPT = 300_000;
/** Tried in turn until one is small enough: longest side [pixels] and quality. */
const trials = [
  [1400, 0.82],
  [1400, 0.7],
  [1100, 0.7],
  [900, 0.6],
  [700, 0.5],
  [500, 0.4],
] as const;

let canvas: OffscreenCanvas | null = null;
let pixels: Pixels | null = null;

function drawn(width: number, height: number, draw: (on: OffscreenCanvasRenderingContext2D) => void): OffscreenCanvas {
  const made = new OffscreenCanvas(width, height);
  // Read back at once, so that it must not lie on the graphics card.
  const on = made.getContext('2d', { willReadFrequently: true });
  if (on === null) throw new Error('no canvas to draw on');
  on.imageSmoothingQuality = 'high';
  // What a picture leaves clear is paper.
  on.fillStyle = '#fff';
  on.fillRect(0, 0, width, height);
  draw(on);
  return made;
}

async function open(file: Blob): Promise<PhotoWork['open']['answer']> {
  const admitted = admit(file.size, new Uint8Array(await file.slice(0, HEAD).arrayBuffer()));
  if (!admitted.ok) return admitted;
  const whole = await createImageBitmap(file, { imageOrientation: 'from-image' }).catch(() => null);
  if (whole === null) return broken();
  const scale = Math.min(1, MOST / Math.max(whole.width, whole.height));
  const width = Math.max(1, Math.round(whole.width * scale));
  const height = Math.max(1, Math.round(whole.height * scale));
  canvas = drawn(width, height, (on) => on.drawImage(whole, 0, 0, width, height));
  whole.close();
  pixels = canvas.getContext('2d')?.getImageData(0, 0, width, height) ?? null;
  return ok({ width, height, bitmap: await createImageBitmap(canvas) });
}

function stepped<T>(id: number, steps: Steps<T>): T {
  for (;;) {
    const next = steps.next();
    if (next.done === true) return next.value;
    postMessage({ id, progress: next.value } satisfies Reply);
  }
}

function flat({ homography, half, pixels: size }: PhotoWork['flat']['ask']): Promise<ImageBitmap> {
  const { data, width, height } = finished(straightened(inHand(), homography, half, size / (2 * half)));
  const image = new ImageData(width, height);
  image.data.set(data);
  return createImageBitmap(image);
}

async function small(crop: PhotoWork['small']['ask']): Promise<PhotoWork['small']['answer']> {
  const from = canvas;
  if (from === null) throw new Error('no picture was opened');
  let jpeg = new Blob();
  let [width, height] = [1, 1];
  for (const [most, quality] of trials) {
    const scale = Math.min(1, most / Math.max(crop.width, crop.height));
    width = Math.max(1, Math.round(crop.width * scale));
    height = Math.max(1, Math.round(crop.height * scale));
    const part = drawn(width, height, (on) =>
      on.drawImage(from, crop.left, crop.top, crop.width, crop.height, 0, 0, width, height),
    );
    jpeg = await part.convertToBlob({ type: 'image/jpeg', quality });
    if (jpeg.size <= KEPT) break;
  }
  const bytes = new Uint8Array(await jpeg.arrayBuffer());
  let binary = '';
  for (let at = 0; at < bytes.length; at += 8192) binary += String.fromCharCode(...bytes.subarray(at, at + 8192));
  return { width, height, jpeg: btoa(binary) };
}

function inHand(): Pixels {
  if (pixels === null) throw new Error('no picture was opened');
  return pixels;
}

async function answer(asked: Ask): Promise<PhotoWork[keyof PhotoWork]['answer']> {
  switch (asked.kind) {
    case 'open':
      return open(asked.ask);
    case 'find':
      return stepped(asked.id, findRings(inHand(), face(asked.ask.face), asked.ask.near ?? undefined));
    case 'flat':
      return flat(asked.ask);
    case 'small':
      return small(asked.ask);
  }
}

const transferred = (reply: PhotoWork[keyof PhotoWork]['answer']): Transferable[] =>
  reply instanceof ImageBitmap ? [reply] : 'value' in reply && 'bitmap' in reply.value ? [reply.value.bitmap] : [];

addEventListener('message', ({ data }: MessageEvent<Ask>) => {
  answer(data).then(
    (reply) => postMessage({ id: data.id, answer: reply } satisfies Reply, { transfer: transferred(reply) }),
    (fault: unknown) => postMessage({ id: data.id, fault: String(fault) } satisfies Reply),
  );
});
