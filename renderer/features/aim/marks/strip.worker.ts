import { seeded, strip } from '../../../../core/aim/index.ts';
import type { StripAsk, StripLane, StripReply } from './messages.ts';

const newest = new Map<StripLane, number>();
const answer = (reply: StripReply) => postMessage(reply);

addEventListener('message', ({ data }: MessageEvent<StripAsk>) => {
  const { id, task, input, seed } = data;
  newest.set(task, id);
  // After whatever else has been asked already: an older strip is not worth a quarter of a second.
  setTimeout(() => {
    if (newest.get(task) !== id) return answer({ id, cancelled: true });
    const { fit, from, to, step, draws } = input;
    answer({ id, result: strip(fit, from, to, step, draws, seeded(seed)) });
  });
});
