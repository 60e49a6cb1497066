import { useEffect, useState } from 'react';
import { chained, type Homography } from '../../../../core/photo/index.ts';
import { toPixel, type FaceView } from '../../../plots/face/geometry.ts';
import type { PhotoWork } from './messages.ts';

interface Flat {
  readonly bitmap: ImageBitmap;
  /** The window that it shows. */
  readonly view: FaceView;
}

/** More pixels than the screen shows are there for the loupe. */
const FOR_LOUPE = 2;
const MOST = 1600;
/** [ms] */
const PAUSE = 40;

/** The straightened face of a window: until it has come, the one before stands in its place, moved and stretched. */
export function useFlat(
  homography: Homography,
  view: FaceView,
  flat: (ask: PhotoWork['flat']['ask']) => Promise<ImageBitmap | null>,
) {
  const [shown, setShown] = useState<Flat | null>(null);
  useEffect(() => {
    let overtaken = false;
    const about = chained(homography, [1, 0, view.middle.x, 0, 1, view.middle.y, 0, 0, 1]);
    const pixels = Math.min(MOST, Math.round(FOR_LOUPE * view.size));
    const ask = async () => {
      const bitmap = await flat({ homography: about, half: view.half, pixels });
      if (bitmap === null) return;
      if (overtaken) bitmap.close();
      else setShown({ bitmap, view });
    };
    // While the wheel turns, none is asked for.
    const wait = setTimeout(() => void ask(), PAUSE);
    return () => {
      overtaken = true;
      clearTimeout(wait);
    };
  }, [homography, view, flat]);
  useEffect(() => () => shown?.bitmap.close(), [shown]);
  if (shown === null) return { bitmap: null, at: { left: 0, top: 0, width: view.size, height: view.size } };
  const { middle, half } = shown.view;
  const corner = toPixel(view, { x: middle.x - half, y: middle.y + half });
  const side = (view.size * half) / view.half;
  return { bitmap: shown.bitmap, at: { left: corner.x, top: corner.y, width: side, height: side } };
}
