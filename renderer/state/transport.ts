import type { Channel } from '../../core/channels.ts';

/** What carries a call to the host: an answer not yet understood, or a refusal of its own. It never throws. */
export interface Transport {
  call(channel: Channel, input: unknown): Promise<unknown>;
  subscribe(listener: (event: unknown) => void): () => void;
}
