/** How large a picture is, read from the beginning of its file: to decode it is to ask for the memory. */
export interface PictureSize {
  readonly width: number;
  readonly height: number;
}

type Read = (bytes: DataView) => PictureSize | null;

const text = (bytes: DataView, at: number, length: number): string =>
  at + length > bytes.byteLength ? '' : String.fromCharCode(...Array.from({ length }, (_, i) => bytes.getUint8(at + i)));

const png: Read = (bytes) =>
  text(bytes, 1, 3) === 'PNG' && bytes.byteLength >= 24 ? { width: bytes.getUint32(16), height: bytes.getUint32(20) } : null;

const gif: Read = (bytes) =>
  text(bytes, 0, 3) === 'GIF' && bytes.byteLength >= 10
    ? { width: bytes.getUint16(6, true), height: bytes.getUint16(8, true) }
    : null;

const bmp: Read = (bytes) =>
  text(bytes, 0, 2) === 'BM' && bytes.byteLength >= 26
    ? { width: Math.abs(bytes.getInt32(18, true)), height: Math.abs(bytes.getInt32(22, true)) }
    : null;

/** The first start-of-frame segment says it; what stands before it (a camera's notes, a small picture of the picture) is passed over. */
const jpeg: Read = (bytes) => {
  if (bytes.byteLength < 4 || bytes.getUint16(0) !== 0xffd8) return null;
  let at = 2;
  while (at + 9 <= bytes.byteLength) {
    if (bytes.getUint8(at) !== 0xff) return null;
    const kind = bytes.getUint8(at + 1);
    const isFrame = kind >= 0xc0 && kind <= 0xcf && kind !== 0xc4 && kind !== 0xc8 && kind !== 0xcc;
    if (isFrame) return { width: bytes.getUint16(at + 7), height: bytes.getUint16(at + 5) };
    at += kind === 0xff ? 1 : 2 + bytes.getUint16(at + 2);
  }
  return null;
};

const webp: Read = (bytes) => {
  if (text(bytes, 0, 4) !== 'RIFF' || text(bytes, 8, 4) !== 'WEBP' || bytes.byteLength < 30) return null;
  const kind = text(bytes, 12, 4);
  if (kind === 'VP8 ') return { width: bytes.getUint16(26, true) & 0x3fff, height: bytes.getUint16(28, true) & 0x3fff };
  const packed = bytes.getUint32(21, true);
  if (kind === 'VP8L') return { width: (packed & 0x3fff) + 1, height: ((packed >>> 14) & 0x3fff) + 1 };
  const three = (from: number) => bytes.getUint16(from, true) + (bytes.getUint8(from + 2) << 16) + 1;
  return kind === 'VP8X' ? { width: three(24), height: three(27) } : null;
};

/** The size that a picture's file states, in whichever of the usual forms it is; null for anything else. */
export function pictureSize(file: Uint8Array): PictureSize | null {
  const bytes = new DataView(file.buffer, file.byteOffset, file.byteLength);
  for (const read of [png, jpeg, webp, gif, bmp]) {
    const size = read(bytes);
    if (size !== null) return size;
  }
  return null;
}
