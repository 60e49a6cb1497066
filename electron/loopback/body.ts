import type { IncomingMessage } from 'node:http';

/** A request's body as text, or null when it is larger than the limit. What is too much is read to its end and dropped, so that the page gets an answer rather than a broken connection. */
export async function readBody(request: IncomingMessage, most: number): Promise<string | null> {
  const parts: Buffer[] = [];
  let bytes = 0;
  for await (const part of request as AsyncIterable<Buffer>) {
    bytes += part.length;
    if (bytes <= most) parts.push(part);
    else parts.length = 0;
    if (bytes > 4 * most) request.destroy();
  }
  return bytes > most ? null : Buffer.concat(parts).toString('utf8');
}
