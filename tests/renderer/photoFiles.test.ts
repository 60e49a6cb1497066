import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { face } from '../../core/group/index.ts';
import { toFace, toPicture, type Homography } from '../../core/photo/index.ts';
import { admit } from '../../renderer/features/groups/photo/admit.ts';
import { cropOf, homographyIn } from '../../renderer/features/groups/photo/crop.ts';
import { pictureSize } from '../../renderer/features/groups/photo/pictureSize.ts';
import { pngOf } from '../e2e/pictureFile.ts';

const ascii = (text: string): number[] => [...Buffer.from(text, 'latin1')];
const zeros = (count: number): number[] => Array.from({ length: count }, () => 0);

/** First bytes of files of 640 by 480, written out from their published forms. */
const heads: readonly (readonly [name: string, bytes: readonly number[]])[] = [
  // PNG specification, third edition, 11.2.1: IHDR begins with width and height, big end first.
  ['a PNG', [0x89, ...ascii('PNG'), 13, 10, 26, 10, 0, 0, 0, 13, ...ascii('IHDR'), 0, 0, 2, 0x80, 0, 0, 1, 0xe0]],
  // ITU-T T.81, B.2.2: after the marker length, precision, lines, samples per line; the segment before it is an application's own.
  ['a JPEG', [0xff, 0xd8, 0xff, 0xe0, 0, 4, 1, 2, 0xff, 0xc0, 0, 17, 8, 1, 0xe0, 2, 0x80, 3]],
  // The same, progressive (SOF2), behind a table (DHT, which has a marker of the same row) and a fill byte (B.1.1.2).
  ['a progressive JPEG', [0xff, 0xd8, 0xff, 0xc4, 0, 3, 9, 0xff, 0xff, 0xc2, 0, 17, 8, 1, 0xe0, 2, 0x80, 3]],
  // GIF89a, 18: logical screen width and height, little end first.
  ['a GIF', [...ascii('GIF89a'), 0x80, 2, 0xe0, 1]],
  // Windows bitmap, BITMAPINFOHEADER; rows from the top down have a height below 0.
  ['a bitmap', [...ascii('BM'), ...zeros(12), 40, 0, 0, 0, 0x80, 2, 0, 0, 0x20, 0xfe, 0xff, 0xff]],
  // RFC 9649: sizes less one in the extended (2.7) and lossless (3.4) forms; RFC 6386, 9.1, in the lossy one, whose two upper bits are a scale.
  ['an extended WebP', [...ascii('RIFF'), ...zeros(4), ...ascii('WEBPVP8X'), 10, ...zeros(7), 0x7f, 2, 0, 0xdf, 1, 0]],
  ['a lossless WebP', [...ascii('RIFF'), ...zeros(4), ...ascii('WEBPVP8L'), ...zeros(4), 0x2f, 0x7f, 0xc2, 0x77, 0, ...zeros(8)]],
  [
    'a lossy WebP',
    [...ascii('RIFF'), ...zeros(4), ...ascii('WEBPVP8 '), ...zeros(7), 0x9d, 1, 0x2a, 0x80, 0x42, 0xe0, 0x41, ...zeros(2)],
  ],
];

describe('The size of a picture', () => {
  it.each(heads)('is read from the head of %s', (_, bytes) => {
    expect(pictureSize(Uint8Array.from(bytes))).toEqual({ width: 640, height: 480 });
  });

  it.each(heads)('is not made up for %s that was cut off', (_, bytes) => {
    for (let length = 0; length < Math.min(bytes.length, 10); length++)
      expect(pictureSize(Uint8Array.from(bytes.slice(0, length)))).toBeNull();
  });

  it('is nothing, and no error, for any other bytes', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 60 }), fc.constantFrom(...heads), (noise, [, head]) => {
        for (const bytes of [noise, Uint8Array.from([...head.slice(0, 4), ...noise])]) {
          const size = pictureSize(bytes);
          expect(size === null || (Number.isInteger(size.width) && size.width >= 0)).toBe(true);
        }
      }),
    );
  });
});

describe('A file', () => {
  const png = pngOf({ data: new Uint8ClampedArray(4 * 12), width: 4, height: 3 });
  const withWidth = (width: number) => {
    const bytes = Uint8Array.from(png);
    new DataView(bytes.buffer).setUint32(16, width);
    return bytes;
  };
  it('is admitted when it is a picture of a size that can be worked on', () => {
    expect(admit(png.length, png)).toEqual({ ok: true, value: { width: 4, height: 3 } });
    expect(admit(60e6, withWidth(33_000_000)).ok).toBe(true);
  });

  it.each([
    ['that is too long', 60_000_001, png, /at most 60 MB was expected; this one has 61 MB/],
    [
      'that would fill the memory, however short it is',
      900,
      withWidth(40_000_000),
      /at most 100 megapixels was expected; this one has 120/,
    ],
    ['that is no picture', 20, Uint8Array.from(ascii('across,up\n12,-8\n')), /JPEG, PNG, WebP, GIF or BMP was expected/],
    ['that is empty', 0, new Uint8Array(0), /no picture/],
    ['that has no width', png.length, withWidth(0), /no picture/],
  ])('is refused in a sentence: one %s', (_, bytes, head, sentence) => {
    const result = admit(bytes, head);
    expect(result.ok ? '' : result.problem.sentence).toMatch(sentence);
  });
});

describe('The part of a photo that is kept', () => {
  /** Straight on, the face's centre in the middle, 1 m a width of 2000 pixels. */
  const straight: Homography = [1, 0, 0.5, 0, -1, 0.375, 0, 0, 1];
  const photo = { width: 2000, height: 1500 };

  it('is the face with a fifth more round it', () => {
    // 0.2 m times 1.2 is 480 pixels either side of the centre.
    expect(cropOf(straight, '40', [], photo)).toEqual({ left: 520, top: 270, width: 960, height: 960 });
  });

  it('reaches to a shot that missed the paper, and never beyond the picture', () => {
    const crop = cropOf(
      straight,
      '40',
      [
        { x: 0.4, y: 0 },
        { x: 0, y: -2 },
      ],
      photo,
    );
    expect(crop).toEqual({ left: 520, top: 270, width: 1280, height: 1230 });
    expect(cropOf(straight, '122', [], { width: 500, height: 375 })).toEqual({ left: 0, top: 0, width: 500, height: 375 });
  });

  it('shows every point of the face where the photo shows it', () => {
    const place = fc.double({ min: -0.2, max: 0.2, noNaN: true });
    const tilt = fc.double({ min: -0.3, max: 0.3, noNaN: true });
    fc.assert(
      fc.property(place, place, tilt, tilt, (x, y, g, h) => {
        const homography: Homography = [1.1, 0.05, 0.52, 0.04, -0.9, 0.36, g, h, 1];
        const crop = cropOf(homography, '40', [], photo);
        const whole = toPicture(homography, { x, y });
        const inPart = homographyIn(homography, crop, photo);
        const part = toPicture(inPart, { x, y });
        expect(crop.left + part.x * crop.width).toBeCloseTo(whole.x * photo.width, 6);
        expect(crop.top + part.y * crop.width).toBeCloseTo(whole.y * photo.width, 6);
        expect(toFace(inPart, part).x).toBeCloseTo(x, 9);
        expect(face('40').rings[0]?.radius).toBe(0.2);
      }),
    );
  });
});
