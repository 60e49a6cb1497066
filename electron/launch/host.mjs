// The loopback host as a child program. Node's own modules only.
import { spawn } from 'node:child_process';
import path from 'node:path';
import { createInterface } from 'node:readline';
import { root } from './bootstrap.mjs';
import { endOf } from './child.mjs';

/**
 * @typedef {object} RunningHost
 * @property {number} pid
 * @property {string} address admits one page, once
 * @property {Promise<number>} ended
 * @property {() => Promise<string>} newAddress another address that admits one page, once
 * @property {() => Promise<number>} stop
 */

/**
 * Starts the built host; resolves when it has printed its first address.
 *
 * @param {{ env?: NodeJS.ProcessEnv, program?: string, nodeFlags?: string[] }} options
 * @returns {Promise<RunningHost>}
 */
export async function startHost({ env = process.env, program = path.join(root, 'dist/electron/host.js'), nodeFlags = [] } = {}) {
  const child = spawn(process.execPath, [...nodeFlags, program], { stdio: ['pipe', 'pipe', 'inherit'], env });
  child.stdin.on('error', () => {}); // it has ended, which `ended` tells
  const end = endOf(child);
  const ended = end.then(({ code }) => code);
  const lines = createInterface({ input: child.stdout });
  /** @returns {Promise<string>} */
  const nextLine = () => {
    /** @type {Promise<string>} */
    const line = new Promise((resolve) => lines.once('line', resolve));
    const noMore = end.then(({ why }) => {
      throw new Error(`the host gives no address: ${why}`);
    });
    return Promise.race([line, noMore]);
  };
  return {
    address: await nextLine(),
    pid: child.pid ?? 0,
    ended,
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
  };
}
