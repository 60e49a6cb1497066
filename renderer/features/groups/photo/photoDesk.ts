import type { Progress } from '../../../../core/photo/index.ts';
import type { PhotoWork, Reply } from './messages.ts';
import { startWorker } from './startWorker.ts';

type Kind = keyof PhotoWork;

/** A worker with one picture in it. Closing it is how a job is left: pixels, job and all are gone at once. */
export interface PhotoDesk {
  /** Null when it failed, or the desk was closed meanwhile. */
  ask<K extends Kind>(
    kind: K,
    ask: PhotoWork[K]['ask'],
    tell?: (progress: Progress) => void,
  ): Promise<PhotoWork[K]['answer'] | null>;
  close(): void;
}

interface Waiting {
  settle(answer: PhotoWork[Kind]['answer'] | null): void;
  tell(progress: Progress): void;
}

export function openDesk(): PhotoDesk {
  const worker = startWorker();
  const waiting = new Map<number, Waiting>();
  let last = 0;
  let closed = false;
  const close = () => {
    closed = true;
    worker.terminate();
    for (const { settle } of waiting.values()) settle(null);
    waiting.clear();
  };
  worker.addEventListener('message', ({ data }: MessageEvent<Reply>) => {
    const one = waiting.get(data.id);
    if ('progress' in data) return one?.tell(data.progress);
    waiting.delete(data.id);
    one?.settle('answer' in data ? data.answer : null);
  });
  worker.addEventListener('error', close);
  return {
    ask: <K extends Kind>(kind: K, ask: PhotoWork[K]['ask'], tell: (progress: Progress) => void = () => undefined) =>
      new Promise<PhotoWork[K]['answer'] | null>((resolve) => {
        if (closed) return resolve(null);
        const id = ++last;
        waiting.set(id, { settle: (answer) => resolve(answer as PhotoWork[K]['answer'] | null), tell });
        worker.postMessage({ id, kind, ask });
      }),
    close,
  };
}
