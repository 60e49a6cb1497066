import http, { type IncomingMessage, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { MOST_CALL_BYTES, TOO_LARGE } from '../../core/channels.ts';
import { refuse, type Result } from '../../core/model/index.ts';
import { readAsset } from '../assets.ts';
import type { Bench } from '../bench.ts';
import { securityHeaders } from '../policy.ts';
import { Admission } from './admission.ts';
import { readBody } from './body.ts';
import { Streams } from './streams.ts';

export interface Loopback {
  readonly origin: string;
  /** An address that admits one page, once; asking for another closes the one before. */
  newAddress(): string;
  close(): Promise<void>;
}

/** Serves the page and the host's contract to a browser window on this machine, and to nobody else. */
export async function serve(bench: Bench, pageFolder: string): Promise<Loopback> {
  const admission = new Admission();
  const streams = new Streams();
  const server = http.createServer((request, response) => {
    answer(request, response).catch((error: unknown) => {
      if (!request.destroyed) console.error(error); // a page that left in the middle is no fault
      response.destroy();
    });
  });
  const port = await listen(server);
  const host = `127.0.0.1:${port}`;
  const origin = `http://${host}`;

  async function answer(request: IncomingMessage, response: ServerResponse): Promise<void> {
    // A foreign name that resolves to 127.0.0.1 reaches this port too; only the name gives it away.
    if (request.headers.host !== host) return refused(response, 421);
    if (request.url === undefined || !URL.canParse(request.url, origin)) return refused(response, 400);
    const { pathname } = new URL(request.url, origin);
    if (pathname === '/api/events') return listenIn(request, response);
    if (pathname.startsWith('/api/')) return call(request, response, pathname.slice('/api/'.length));
    if (request.method !== 'GET' && request.method !== 'HEAD') return refused(response, 405);
    const asset = await readAsset(pageFolder, pathname);
    if (asset === null) return refused(response, 404);
    send(response, 200, asset.type, request.method === 'HEAD' ? '' : asset.body);
  }

  async function call(request: IncomingMessage, response: ServerResponse, channel: string): Promise<void> {
    if (request.method !== 'POST') return refused(response, 405);
    if (request.headers.origin !== origin || request.headers['content-type'] !== 'application/json')
      return refused(response, 403);
    const { authorization } = request.headers;
    if (channel === 'session') {
      const token = admission.redeem(authorization);
      return token === null ? refused(response, 401) : send(response, 200, 'application/json', JSON.stringify({ token }));
    }
    if (!admission.admits(authorization)) return refused(response, 401);
    const body = await readBody(request, MOST_CALL_BYTES);
    if (body === null) return reply(response, 413, refuse('too-large', TOO_LARGE));
    const input = parsed(body);
    if (input === undefined) return reply(response, 400, refuse('bad-input', 'The call was not JSON. Reload the page.'));
    const { reply: result, event } = await bench.call(channel, input);
    reply(response, 200, result);
    if (event !== null) streams.tell(event, pageOf(request));
  }

  /** A same-origin GET carries no Origin header; the token, which no other page has, admits it. */
  function listenIn(request: IncomingMessage, response: ServerResponse): void {
    if (request.method !== 'GET') return refused(response, 405);
    const { origin: from = origin, authorization } = request.headers;
    const site = request.headers['sec-fetch-site'] ?? 'same-origin';
    if (from !== origin || site !== 'same-origin') return refused(response, 403);
    if (!admission.admits(authorization)) return refused(response, 401);
    response.writeHead(200, { ...securityHeaders, 'Content-Type': 'application/x-ndjson' });
    response.flushHeaders();
    streams.add(pageOf(request), response);
  }

  return {
    origin,
    newAddress: () => `${origin}/#code=${admission.newCode()}`,
    close: () =>
      new Promise((closed) => {
        streams.end();
        server.close(() => closed());
        server.closeAllConnections();
      }),
  };
}

function listen(server: http.Server): Promise<number> {
  return new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(0, '127.0.0.1', () => resolve((server.address() as AddressInfo).port));
  });
}

const send = (response: ServerResponse, status: number, type: string, body: string | Buffer): void => {
  response.writeHead(status, { ...securityHeaders, 'Content-Type': type });
  response.end(body);
};
const reply = (response: ServerResponse, status: number, result: Result<unknown>): void =>
  send(response, status, 'application/json', JSON.stringify(result));
const refused = (response: ServerResponse, status: number): void =>
  send(response, status, 'text/plain; charset=utf-8', http.STATUS_CODES[status] ?? '');
const pageOf = (request: IncomingMessage): string => String(request.headers['x-fistmele-page'] ?? '');

function parsed(text: string): unknown {
  try {
    return JSON.parse(text) as unknown;
  } catch {
    return undefined;
  }
}
