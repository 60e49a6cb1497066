import { Worker } from 'node:worker_threads';
import type { Answer } from './api.ts';
import type { Bench, BenchOptions } from './bench.ts';

/** Reading and writing a large notebook takes a moment; in a thread of its own it holds up neither windows nor requests. */
export function benchInWorker(workerFile: string, options: BenchOptions): Bench {
  const worker = new Worker(workerFile, { workerData: options });
  const waiting = new Map<number, { answer: (answer: Answer) => void; fail: (error: Error) => void }>();
  let asked = 0;
  let end: Error | null = null;

  worker.on('message', ({ id, answer }: { id: number; answer: Answer }) => {
    waiting.get(id)?.answer(answer);
    waiting.delete(id);
  });
  const stopped = new Promise<void>((resolve) => {
    worker.on('error', (error) => {
      end = error;
    });
    worker.on('exit', () => {
      end ??= new Error('the notebook thread has ended');
      for (const { fail } of waiting.values()) fail(end);
      waiting.clear();
      resolve();
    });
  });

  return {
    call(channel, input) {
      if (end !== null) return Promise.resolve(gone);
      const id = asked++;
      return new Promise<Answer>((answer, fail) => {
        waiting.set(id, { answer, fail });
        worker.postMessage({ id, channel, input });
      }).catch(() => gone);
    },
    async close() {
      if (end === null) worker.postMessage('close');
      await stopped;
    },
  };
}

const gone: Answer = {
  reply: {
    ok: false,
    problem: {
      code: 'notebook-stopped',
      sentence: 'The notebook has stopped answering. What was saved stays; start the bench again.',
    },
  },
  event: null,
};
