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
  const opening = useRef<PhotoDesk | null>(null);
  const [photo, setPhoto] = useState<OpenPhoto | null>(null);
  const [work, setWork] = useState<Progress | null>(null);
  const [found, setFound] = useState<FoundRings | null>(null);
  const [wrong, setWrong] = useState<string | null>(null);

  const leave = () => {
    for (const one of [desk, opening]) {
      one.current?.close();
      one.current = null;
    }
  };
  useEffect(() => leave, []);

  /** The picture before stays until the new one has proved to be one. */
  const open = async (file: Blob): Promise<boolean> => {
    const own = openDesk();
    opening.current?.close();
    opening.current = own;
    setWork({ share: 0, doing: 'Opening the picture' });
    const opened = await own.ask('open', file);
    // Somebody chose another file, or left, while this one was being opened.
    if (opening.current !== own) return false;
    opening.current = null;
    setWork(null);
    if (opened === null || !opened.ok) {
      own.close();
      setWrong(opened === null ? FAILED : opened.problem.sentence);
      return false;
    }
    desk.current?.close();
    desk.current = own;
    setWrong(null);
    setFound(null);
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
    if (rings?.ok === true) setFound(rings.value);
    else setWrong(rings?.problem.sentence ?? FAILED);
  };

  /** Leaves whatever is being done. A picture whose rings were looked for is opened anew, since the worker that had it is gone. */
  const stop = async (): Promise<void> => {
    const searched = opening.current === null ? photo : null;
    if (searched === null) {
      opening.current?.close();
      opening.current = null;
      return setWork(null);
    }
    leave();
    if (await open(searched.file)) setWrong(STOPPED);
  };

  const flat = useCallback(
    (ask: PhotoWork['flat']['ask']): Promise<ImageBitmap | null> => desk.current?.ask('flat', ask) ?? Promise.resolve(null),
    [],
  );
  const small = (crop: PhotoWork['small']['ask']) => desk.current?.ask('small', crop) ?? Promise.resolve(null);

  return { photo, work, found, wrong, open, find, stop, flat, small };
}
