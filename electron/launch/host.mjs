// The loopback host as a child program. Node's own modules only.
import { spawn } from 'node:child_process';
import path from 'node:path';
import { createInterface } from 'node:readline';
import { root } from './bootstrap.mjs';

/** Starts the built host; resolves when it has printed its first address. */
export function startHost({ env = process.env, program = path.join(root, 'dist/electron/host.js') } = {}) {
  const child = spawn(process.execPath, [program], { stdio: ['pipe', 'pipe', 'inherit'], env });
  const lines = createInterface({ input: child.stdout });
  const nextLine = () =>
    new Promise((resolve, reject) => {
      lines.once('line', resolve);
      child.once('exit', (code) => reject(new Error(`the host ended with ${code} before it was ready`)));
    });
  const ended = new Promise((resolve) => child.once('exit', (code) => resolve(code ?? 1)));
  return nextLine().then((address) => ({
    pid: child.pid,
    address,
    ended,
    /** Another address that admits one page, once. */
    newAddress: () => {
      const line = nextLine();
      child.stdin.write('\n');
      return line;
    },
    /** The end of its input tells the host to close the notebook and go, on every platform. */
    stop: () => {
      child.stdin.end();
      return ended;
    },
  }));
}
