import { refuse } from '../../core/model/problem.ts';
import type { Transport } from './transport.ts';

/** What Electron's preload script puts into the page: two functions and nothing of Electron's own. */
interface Bridge {
  call(channel: string, input: unknown): Promise<unknown>;
  subscribe(listener: (event: unknown) => void): () => void;
}

declare global {
  interface Window {
    readonly fistmele?: Bridge;
  }
}

export function electronTransport(bridge: Bridge): Transport {
  return {
    call: (channel, input) =>
      bridge
        .call(channel, input)
        .catch(() =>
          refuse('host-gone', 'The bench did not answer. Close its window and open it again; everything entered is kept.'),
        ),
    subscribe: (listener) => bridge.subscribe(listener),
  };
}
