import type { ServerResponse } from 'node:http';
import type { HostEvent } from '../../core/host.ts';

/** The pages that listen, each by the name it gave itself. */
export class Streams {
  readonly #open = new Map<ServerResponse, string>();

  add(page: string, response: ServerResponse): void {
    this.#open.set(response, page);
    response.on('close', () => this.#open.delete(response));
  }

  /** To every page but the one whose call it was. */
  tell(event: HostEvent, caller: string): void {
    const line = `${JSON.stringify(event)}\n`;
    for (const [response, page] of this.#open) if (page !== caller) response.write(line);
  }

  end(): void {
    for (const response of this.#open.keys()) response.end();
  }
}
