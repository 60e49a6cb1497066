import { createHash } from 'node:crypto';
import fs from 'node:fs';
import net from 'node:net';
import os from 'node:os';
import path from 'node:path';

export interface Mutex {
  release(): Promise<void>;
}

/**
 * Who holds a notebook, said by a listening local socket, because the operating system closes it with its owner, however that one
 * died. The SQLite driver's own lock is a folder that outlives a killed process for ever; whoever holds this mutex may remove it.
 * Null: another bench holds it.
 */
export async function acquire(file: string): Promise<Mutex | null> {
  const address = mutexAddress(file);
  const first = await listen(address);
  if (first !== null) return first;
  if (!isSocketFile(address) || (await answers(address))) return null;
  fs.rmSync(address, { force: true }); // a socket file, unlike a pipe or an abstract socket, outlives its owner
  return listen(address);
}

/** One name per file, whatever link or relative path led to it. */
export function mutexAddress(file: string, platform: NodeJS.Platform = process.platform): string {
  const id = createHash('sha256').update(realPath(file)).digest('hex').slice(0, 24);
  if (platform === 'win32') return `\\\\.\\pipe\\fistmele-${id}`;
  if (platform === 'linux') return `\0fistmele-${id}`;
  return path.join(os.tmpdir(), `fistmele-${id}.sock`);
}

function realPath(file: string): string {
  if (fs.existsSync(file)) return fs.realpathSync(file);
  return path.join(fs.realpathSync(path.dirname(path.resolve(file))), path.basename(file));
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
