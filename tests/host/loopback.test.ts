import fs from 'node:fs';
import http from 'node:http';
import net from 'node:net';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { MOST_CALL_BYTES, TOO_LARGE } from '../../core/channels.ts';
import { type Bench, createBench } from '../../electron/bench.ts';
import { type Loopback, serve } from '../../electron/loopback/serve.ts';
import { anArcher, change } from './support.ts';

const folder = fs.mkdtempSync(path.join(process.env['TMPDIR'] ?? '/tmp', 'fistmele-loopback-'));
let bench: Bench;
let host: Loopback;

beforeAll(async () => {
  fs.mkdirSync(path.join(folder, 'page/assets'), { recursive: true });
  fs.writeFileSync(path.join(folder, 'page/index.html'), '<!doctype html><title>bench</title>');
  fs.writeFileSync(path.join(folder, 'page/assets/bench.js'), 'export {};');
  fs.writeFileSync(path.join(folder, 'page/.secret.js'), 'hidden');
  if (process.platform !== 'win32') fs.writeFileSync(path.join(folder, 'page/a\\b.js'), 'hidden behind a backslash');
  fs.writeFileSync(path.join(folder, 'page/strange.xyz'), 'of no known type');
  fs.writeFileSync(path.join(folder, 'outside.js'), 'outside');
  fs.symlinkSync(path.join(folder, 'outside.js'), path.join(folder, 'page/link.js'));
  bench = createBench({ file: path.join(folder, 'notebook.sqlite'), shell: 'loopback', version: '0' });
  host = await serve(bench, path.join(folder, 'page'));
});
afterAll(async () => {
  await host.close();
  await bench.close();
  fs.rmSync(folder, { recursive: true, force: true });
});

interface Ask {
  method?: string;
  headers?: Record<string, string | undefined>;
  body?: string | Buffer;
}
interface Got {
  status: number;
  headers: http.IncomingHttpHeaders;
  text: string;
}

/** A request as bare as the wire allows: the path as written, any header at all, also those that a browser would not let a page set. */
function ask(pathAsWritten: string, { method = 'GET', headers = {}, body }: Ask = {}): Promise<Got> {
  const { hostname, port, host: name } = new URL(host.origin);
  const sent = Object.fromEntries(
    Object.entries({ host: name, ...headers }).filter(([, value]) => value !== undefined),
  ) as Record<string, string>;
  return new Promise((resolve, reject) => {
    const request = http.request({ hostname, port, path: pathAsWritten, method, headers: sent, setHost: false }, (response) => {
      const parts: Buffer[] = [];
      response.on('data', (part: Buffer) => parts.push(part));
      response.on('end', () =>
        resolve({ status: response.statusCode ?? 0, headers: response.headers, text: Buffer.concat(parts).toString() }),
      );
    });
    request.on('error', reject);
    request.end(body);
  });
}

const ours = (): Record<string, string> => ({ origin: host.origin, 'content-type': 'application/json' });
const codeOf = (address: string) => new URLSearchParams(new URL(address).hash.slice(1)).get('code') ?? '';
const redeem = (code: string) =>
  ask('/api/session', { method: 'POST', headers: { ...ours(), authorization: `Bearer ${code}` }, body: 'null' });
async function tokenOf(): Promise<string> {
  return (JSON.parse((await redeem(codeOf(host.newAddress()))).text) as { token: string }).token;
}
const call = (channel: string, token: string, input: unknown, headers: Ask['headers'] = {}) =>
  ask(`/api/${channel}`, {
    method: 'POST',
    headers: { ...ours(), authorization: `Bearer ${token}`, ...headers },
    body: JSON.stringify(input),
  });

describe('The loopback host', () => {
  it('listens on 127.0.0.1 and serves the page with a strict policy', async () => {
    expect(host.origin).toMatch(/^http:\/\/127\.0\.0\.1:\d+$/);
    const page = await ask('/');
    expect(page.status).toBe(200);
    expect(page.text).toContain('<title>bench</title>');
    const policy = String(page.headers['content-security-policy']);
    expect(policy).toMatch(/^default-src 'none';/);
    for (const part of [
      "script-src 'self'",
      "style-src 'self'",
      "connect-src 'self'",
      "frame-ancestors 'none'",
      "worker-src 'self'",
      'trusted-types photo-worker strip-worker',
    ]) {
      expect(policy.split('; ')).toContain(part);
    }
    expect(policy).not.toMatch(/unsafe|\*|https?:/);
    expect(page.headers).toMatchObject({
      'x-content-type-options': 'nosniff',
      'referrer-policy': 'no-referrer',
      'cache-control': 'no-store',
    });
    expect((await ask('/assets/bench.js')).headers['content-type']).toBe('text/javascript; charset=utf-8');
    expect(await ask('/', { method: 'HEAD' })).toMatchObject({ status: 200, text: '' });
  });

  it('is not there at any other address of this machine', async () => {
    // 127.0.0.2 is this machine too (RFC 1122: all of 127.0.0.0/8 is loopback); a host that listened on every address would answer.
    const port = Number(new URL(host.origin).port);
    const answer = await new Promise<string>((resolve) => {
      const socket = net.connect({ port, host: '127.0.0.2', timeout: 2000 });
      socket.once('connect', () => resolve('connected'));
      socket.once('error', ({ message }) => resolve(message));
      socket.once('timeout', () => resolve('timed out'));
      socket.once('connect', () => socket.destroy());
    });
    expect(answer).not.toBe('connected');
  });

  it('allows no other origin: not one answer carries a CORS header', async () => {
    const answers = [
      await ask('/', { headers: { origin: 'http://evil.test' } }),
      await ask('/api/bench.info', {
        method: 'OPTIONS',
        headers: { origin: 'http://evil.test', 'access-control-request-method': 'POST' },
      }),
      await call('bench.info', await tokenOf(), null),
    ];
    for (const { headers } of answers)
      expect(Object.keys(headers).filter((name) => name.startsWith('access-control'))).toEqual([]);
  });

  it.each([
    ['another name for this machine', 'localhost'],
    ['a name that was made to resolve here', 'evil.test'],
    ['the right address with another port', '127.0.0.1:1'],
    ['the right address without its port', '127.0.0.1'],
  ])('turns away a request for %s', async (_what, name) => {
    for (const pathname of ['/', '/api/bench.info']) expect((await ask(pathname, { headers: { host: name } })).status).toBe(421);
  });

  it('admits a page once with the code of its address', async () => {
    const code = codeOf(host.newAddress());
    const first = await redeem(code);
    expect(first.status).toBe(200);
    expect((await redeem(code)).status, 'a second time').toBe(401);
    const { token } = JSON.parse(first.text) as { token: string };
    expect((await call('bench.info', token, null)).status).toBe(200);
    expect((await redeem(token)).status, 'the token is no code').toBe(401);
    expect((await call('bench.info', code, null)).status, 'the code is no token').toBe(401);
  });

  it('closes the address before when another is asked for', async () => {
    const older = codeOf(host.newAddress());
    const newer = codeOf(host.newAddress());
    expect((await redeem(older)).status).toBe(401);
    expect((await redeem(newer)).status).toBe(200);
  });

  it.each([
    ['no token', { authorization: undefined }, 401],
    ['a wrong token', { authorization: `Bearer ${'A'.repeat(43)}` }, 401],
    ['a token of another scheme', { authorization: 'Basic AAAA' }, 401],
    ['no origin', { origin: undefined }, 403],
    ['another origin', { origin: 'http://evil.test' }, 403],
    ['the origin of another port', { origin: 'http://127.0.0.1:1' }, 403],
    ['a sandboxed origin', { origin: 'null' }, 403],
    ['no content type', { 'content-type': undefined }, 403],
    ['the content type of a form', { 'content-type': 'text/plain' }, 403],
  ])('refuses a call with %s', async (_what, headers, status) => {
    expect(await call('notebook.load', await tokenOf(), { book: 'own' }, headers)).toMatchObject({ status });
  });

  it('answers a call of any other method with 405', async () => {
    const headers = { ...ours(), authorization: `Bearer ${await tokenOf()}` };
    for (const method of ['GET', 'PUT', 'DELETE']) expect((await ask('/api/bench.info', { method, headers })).status).toBe(405);
    expect((await ask('/', { method: 'POST', headers })).status).toBe(405);
    expect((await ask('/api/events', { method: 'POST', headers })).status).toBe(405);
  });

  it.each([
    '/../outside.js',
    '/..%2Foutside.js',
    '/%2e%2e/outside.js',
    '/assets/../../outside.js',
    '/..%5Coutside.js',
    '/assets/..\\..\\outside.js',
    '/a%5Cb.js',
    '/link.js',
    '/.secret.js',
    '/%2Esecret.js',
    '/index.html%00.js',
    '/%',
    '/strange.xyz',
    '/assets',
    '/nothing.js',
    '//',
    '/../../../../../../etc/passwd',
  ])('gives nothing away for %s', async (pathname) => {
    const got = await ask(pathname);
    expect([400, 404]).toContain(got.status);
    expect(got.text).not.toMatch(/outside|hidden|root:|of no known/);
  });

  it('says in a sentence what is too large, and goes on serving', async () => {
    const token = await tokenOf();
    const got = await ask('/api/notebook.apply', {
      method: 'POST',
      headers: { ...ours(), authorization: `Bearer ${token}` },
      body: Buffer.alloc(MOST_CALL_BYTES + 1, 0x20),
    });
    expect(got.status).toBe(413);
    expect(JSON.parse(got.text)).toEqual({ ok: false, problem: { code: 'too-large', sentence: TOO_LARGE } });
    expect((await call('bench.info', token, null)).status).toBe(200);
  });

  it('cuts a flood off', async () => {
    const headers = { ...ours(), authorization: `Bearer ${await tokenOf()}` };
    await expect(
      ask('/api/notebook.apply', { method: 'POST', headers, body: Buffer.alloc(5 * MOST_CALL_BYTES) }),
    ).rejects.toThrow(/socket hang up|ECONNRESET|EPIPE/);
    expect((await ask('/')).status).toBe(200);
  });

  it('answers what is no JSON, and calls that it does not know, with a sentence', async () => {
    const token = await tokenOf();
    const headers = { ...ours(), authorization: `Bearer ${token}` };
    for (const body of ['', '{', '{"book":', '\u0000']) {
      const got = await ask('/api/notebook.load', { method: 'POST', headers, body });
      expect(got.status).toBe(400);
      expect(JSON.parse(got.text)).toMatchObject({ ok: false, problem: { code: 'bad-input' } });
    }
    for (const channel of ['notebook.burn', '__proto__', 'no%20such', 'session/', 'constructor']) {
      expect(JSON.parse((await call(channel, token, null)).text)).toMatchObject({ ok: false, problem: { code: 'unknown-call' } });
    }
  });
});

/** Collects the lines of an event stream. */
function listenAs(page: string, headers: Record<string, string>): Promise<{ status: number; lines: unknown[]; end: () => void }> {
  return new Promise((resolve, reject) => {
    const request = http.get(`${host.origin}/api/events`, { headers: { ...headers, 'x-fistmele-page': page } }, (response) => {
      const lines: unknown[] = [];
      response.on('data', (part: Buffer) =>
        lines.push(
          ...part
            .toString()
            .split('\n')
            .filter(Boolean)
            .map((line) => JSON.parse(line) as unknown),
        ),
      );
      response.on('error', () => {});
      resolve({ status: response.statusCode ?? 0, lines, end: () => request.destroy() });
    });
    request.on('error', reject);
  });
}

describe('The event stream', () => {
  it('tells the other pages of a write, and not the one that wrote', async () => {
    const token = await tokenOf();
    const [writer, other] = await Promise.all([
      listenAs('one', { authorization: `Bearer ${token}` }),
      listenAs('two', { authorization: `Bearer ${token}` }),
    ]);
    const input = { book: 'own', change: change(null, anArcher(1)) };
    await call('notebook.apply', token, input, { 'x-fistmele-page': 'one' });
    await call('notebook.undo', token, { book: 'own', expected: 1 }, { 'x-fistmele-page': 'two' });
    await expect.poll(() => [writer.lines.length, other.lines.length]).toEqual([1, 1]);
    expect(other.lines[0]).toMatchObject({
      event: 'notebook.changed',
      book: 'own',
      written: { records: [{ record: { name: 'Archer 1' } }] },
    });
    expect(writer.lines[0]).toMatchObject({ written: { records: [{ record: null }] } });
    writer.end();
    other.end();
  });

  it('is for admitted pages of its own origin only', async () => {
    const authorization = `Bearer ${await tokenOf()}`;
    expect((await ask('/api/events')).status).toBe(401);
    expect((await ask('/api/events', { headers: { authorization, origin: 'http://evil.test' } })).status).toBe(403);
    expect((await ask('/api/events', { headers: { authorization, 'sec-fetch-site': 'cross-site' } })).status).toBe(403);
  });
});
