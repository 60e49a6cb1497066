import type { StripRow } from '../../../../core/aim/index.ts';
import { refuse, type Result } from '../../../../core/model/problem.ts';
import type { StripAsk, StripInput, StripLane, StripReply } from './messages.ts';
import { startWorker } from './startWorker.ts';

/** Any one: the same marks give the same strip whenever they are asked. */
const SEED = 20_261_126;

type Answer = Result<StripRow[]> | null;

let worker: Worker | null = null;
const waiting = new Map<number, (answer: Answer) => void>();
let last = 0;

function working(): Worker {
  if (worker !== null) return worker;
  const started = startWorker();
  started.addEventListener('message', ({ data }: MessageEvent<StripReply>) => {
    waiting.get(data.id)?.('result' in data ? data.result : null);
    waiting.delete(data.id);
  });
  started.addEventListener('error', () => {
    started.terminate();
    worker = null;
    for (const settle of waiting.values())
      settle(refuse('strip', 'The strip could not be worked out. Change a mark or a distance, and it is tried again.'));
    waiting.clear();
  });
  worker = started;
  return started;
}

/** A strip with its intervals; null when a newer one of its kind was asked for before it was done. */
export function askStrip(task: StripLane, input: StripInput): Promise<Answer> {
  return new Promise((settle) => {
    const id = ++last;
    waiting.set(id, settle);
    working().postMessage({ id, task, input, seed: SEED } satisfies StripAsk);
  });
}
