import { crc32, deflateSync } from 'node:zlib';
import type { Page } from 'playwright/test';

/** A picture as a PNG file, as small as speed allows (PNG specification, third edition: eight bits of red, green and blue, no filter). */
export function pngOf({
  data,
  width,
  height,
}: {
  readonly data: Uint8ClampedArray;
  readonly width: number;
  readonly height: number;
}): Buffer {
  const rows = Buffer.alloc(height * (1 + 3 * width));
  let to = 0;
  for (let j = 0; j < height; j++) {
    rows[to++] = 0;
    for (let at = 4 * j * width; at < 4 * (j + 1) * width; at += 4) {
      rows[to++] = data[at]!;
      rows[to++] = data[at + 1]!;
      rows[to++] = data[at + 2]!;
    }
  }
  const header = Buffer.alloc(13);
  header.writeUInt32BE(width, 0);
  header.writeUInt32BE(height, 4);
  header.set([8, 2, 0, 0, 0], 8);
  const signature = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
  return Buffer.concat([signature, chunk('IHDR', header), chunk('IDAT', deflateSync(rows, { level: 1 })), chunk('IEND')]);
}

function chunk(kind: string, data = Buffer.alloc(0)): Buffer {
  const named = Buffer.concat([Buffer.from(kind, 'latin1'), data]);
  const whole = Buffer.alloc(named.length + 8);
  whole.writeUInt32BE(data.length, 0);
  named.copy(whole, 4);
  whole.writeUInt32BE(crc32(named), named.length + 4);
  return whole;
}

/**
 * A picture as a phone that was held upright keeps it: a JPEG that lies on its side, and a line in its Exif part that says how it is turned
 * (Exif 2.32: tag 0x0112, 6 where the first row is the right side of what was seen).
 */
export async function asPhoneKeepsIt(page: Page, png: Buffer): Promise<Buffer> {
  const base64 = await page.evaluate(async (source) => {
    const bytes = Uint8Array.from(atob(source), (one) => one.charCodeAt(0));
    const upright = await createImageBitmap(new Blob([bytes], { type: 'image/png' }));
    const canvas = document.createElement('canvas');
    [canvas.width, canvas.height] = [upright.height, upright.width];
    const pen = canvas.getContext('2d')!;
    pen.translate(0, upright.width);
    pen.rotate(-Math.PI / 2);
    pen.drawImage(upright, 0, 0);
    return canvas.toDataURL('image/jpeg', 0.9).split(',')[1] ?? '';
  }, png.toString('base64'));
  const jpeg = Buffer.from(base64, 'base64');
  const exif = Buffer.from('ffe100224578696600004d4d002a00000008000101120003000000010006000000000000', 'hex');
  return Buffer.concat([jpeg.subarray(0, 2), exif, jpeg.subarray(2)]);
}
