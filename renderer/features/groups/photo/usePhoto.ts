import { useCallback, useEffect, useRef, useState } from 'react';
import type { FaceId } from '../../../../core/model/group.ts';
import type { PicturePoint } from '../../../../core/model/picture.ts';
import type { FoundRings, Progress } from '../../../../core/photo/index.ts';
import type { PhotoWork } from './messages.ts';
import { openDesk, type PhotoDesk } from './photoDesk.ts';

/** A picture on the desk, for the eye; its pixels are the worker's. */
export interface OpenPhoto {
  readonly file: Blob;
  readonly width: number;
  readonly height: number;
  readonly bitmap: ImageBitmap;
}

const FAILED = 'The picture could not be read. Choose it again, or a smaller one.';
const STOPPED = 'The search was stopped. Mark the rings by hand.';

/** A photo from its file to its rings: what is open, what is being done, what was found, and what went wrong, in a sentence. */
export function usePhoto(faceId: FaceId) {
  const desk = useRef<PhotoDesk | null>(null);
  const [photo, setPhoto] = useState<OpenPhoto | null>(null);
  const [work, setWork] = useState<Progress | null>(null);
  const [found, setFound] = useState<FoundRings | null>(null);
  const [wrong, setWrong] = useState<string | null>(null);

  const leave = () => {
    desk.current?.close();
    desk.current = null;
  };
  useEffect(() => leave, []);

  const open = async (file: Blob): Promise<boolean> => {
    leave();
    const own = openDesk();
    desk.current = own;
    setWork({ share: 0, doing: 'Opening the picture' });
    const opened = await own.ask('open', file);
    // Somebody chose another file, or left, while this one was being opened.
    if (desk.current !== own) return false;
    setWork(null);
    if (opened === null || !opened.ok) {
      setWrong(opened === null ? FAILED : opened.problem.sentence);
      leave();
      return false;
    }
    setPhoto({ file, ...opened.value });
    return true;
  };

  const find = async (near: PicturePoint | null): Promise<void> => {
    const own = desk.current;
    if (own === null) return;
    setWork({ share: 0, doing: 'Looking for the rings' });
    setWrong(null);
    const rings = await own.ask('find', { face: faceId, near }, setWork);
    if (desk.current !== own) return;
    setWork(null);
    setFound(rings?.ok === true ? rings.value : null);
    if (rings?.ok !== true) setWrong(rings?.problem.sentence ?? FAILED);
  };

  const choose = async (file: Blob): Promise<void> => {
    setPhoto(null);
    setFound(null);
    setWrong(null);
    if (await open(file)) await find(null);
  };

  /** Leaves whatever is being done. The picture stays, opened anew, since the worker that had it is gone. */
  const stop = async (): Promise<void> => {
    const kept = photo;
    leave();
    setWork(null);
    if (kept === null) return;
    setWrong(STOPPED);
    await open(kept.file);
  };

  const flat = useCallback(
    (ask: PhotoWork['flat']['ask']): Promise<ImageBitmap | null> => desk.current?.ask('flat', ask) ?? Promise.resolve(null),
    [],
  );
  const small = (crop: PhotoWork['small']['ask']) => desk.current?.ask('small', crop) ?? Promise.resolve(null);

  return { photo, work, found, wrong, choose, find, stop, flat, small };
}
