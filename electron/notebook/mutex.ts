import { createHash } from 'node:crypto';
import fs from 'node:fs';
import net from 'node:net';
import os from 'node:os';
import path from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';

export interface Mutex {
  release(): Promise<void>;
}

/**
 * Who holds a notebook, said by a listening local socket, because the operating system closes it with its owner, however that one
 * died. The SQLite driver's own lock is a folder that outlives a killed process for ever; whoever holds this mutex may remove it.
 * Null: another bench holds it.
 */
export const acquire = (file: string): Promise<Mutex | null> => acquireAt(mutexAddress(file));

/**
 * A closed socket may still be held for some milliseconds: a process that starts another one is copied whole, sockets and all, until
 * the copy has become the other program. So a holder is asked again for a moment before it is believed to be another bench.
 */
export async function acquireAt(address: string, patience = 500): Promise<Mutex | null> {
  for (const end = performance.now() + patience; ; await pause(20)) {
    const mutex = await tryAt(address);
    if (mutex !== null || performance.now() > end) return mutex;
  }
}

async function tryAt(address: string): Promise<Mutex | null> {
  const first = await listen(address);
  if (first !== null) return first;
  if (!isSocketFile(address) || (await answers(address))) return null;
  return takeFromDead(address);
}

const LONGEST_CLEARING = 10_000;

/**
 * A socket file, unlike a pipe or an abstract socket, outlives its owner; macOS has nothing better. Were two benches to find it dead,
 * the slower could remove what the faster had just put in its place, so only the maker of a folder beside it may ask again, remove and
 * take. A folder that is old was left by a bench killed in just that moment. (This way is tested under Linux; it was not run on macOS.)
 */
async function takeFromDead(address: string): Promise<Mutex | null> {
  const turn = `${address}.turn`;
  const made = fs.statSync(turn, { throwIfNoEntry: false })?.mtimeMs ?? Infinity;
  if (Date.now() - made > LONGEST_CLEARING) fs.rmSync(turn, { recursive: true, force: true });
  try {
    fs.mkdirSync(turn);
  } catch {
    return null;
  }
  try {
    if (await answers(address)) return null;
    fs.rmSync(address, { force: true });
    return await listen(address);
  } finally {
    fs.rmSync(turn, { recursive: true, force: true });
  }
}

/** A short name for a file, fit for any place that takes names. */
export const notebookKey = (file: string): string => createHash('sha256').update(realPath(file)).digest('hex').slice(0, 24);

/**
 * One name per file, whatever link, relative path or spelling led to it; on a disk that minds no capitals the operating system knows
 * how the name is really spelt.
 */
export function mutexAddress(file: string, platform: NodeJS.Platform = process.platform): string {
  const id = notebookKey(file);
  if (platform === 'win32') return `\\\\.\\pipe\\fistmele-${id}`;
  if (platform === 'linux') return `\0fistmele-${id}`;
  return path.join(os.tmpdir(), `fistmele-${id}.sock`);
}

/** Also of a file that is not there yet, in a folder that is not there yet. */
function realPath(file: string): string {
  const full = path.resolve(file);
  const parent = path.dirname(full);
  if (fs.existsSync(full) || parent === full) return fs.realpathSync.native(full);
  return path.join(realPath(parent), path.basename(full));
}

const isSocketFile = (address: string) => !address.startsWith('\0') && !address.startsWith('\\\\');

function listen(address: string): Promise<Mutex | null> {
  return new Promise((resolve, reject) => {
    const server = net.createServer((caller) => caller.destroy());
    server.once('error', (error: NodeJS.ErrnoException) => {
      if (error.code === 'EADDRINUSE') resolve(null);
      else reject(error);
    });
    server.listen({ path: address, exclusive: true }, () => {
      server.unref();
      resolve({ release: () => new Promise((released) => server.close(() => released())) });
    });
  });
}

function answers(address: string): Promise<boolean> {
  return new Promise((resolve) => {
    const caller = net.connect(address);
    caller.once('connect', () => {
      caller.destroy();
      resolve(true);
    });
    caller.once('error', () => resolve(false));
  });
}
