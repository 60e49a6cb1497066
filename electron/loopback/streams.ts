import type { Writable } from 'node:stream';
import { MOST_CALL_BYTES } from '../../core/channels.ts';
import type { HostEvent } from '../../core/host.ts';

/** What may wait for one page: room for two of the largest Changes. */
export const MOST_WAITING_BYTES = 2 * MOST_CALL_BYTES;

/** The pages that listen, each by the name it gave itself. */
export class Streams {
  readonly #open = new Map<Writable, string>();

  add(page: string, stream: Writable): void {
    this.#open.set(stream, page);
    stream.on('close', () => this.#open.delete(stream));
  }

  /**
   * To every page but the one whose call it was. A page that reads no longer (asleep, or stopped in a debugger) would have the host
   * keep all its news; it loses its line instead, and when it wakes it connects anew and loads the notebook.
   */
  tell(event: HostEvent, caller: string): void {
    const line = `${JSON.stringify(event)}\n`;
    for (const [stream, page] of this.#open) {
      if (page === caller) continue;
      stream.write(line);
      if (stream.writableLength > MOST_WAITING_BYTES) stream.destroy();
    }
  }

  end(): void {
    for (const stream of this.#open.keys()) stream.end();
  }
}
