import { spawn } from 'node:child_process';
import { once } from 'node:events';
import fs from 'node:fs';
import path from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { Worker } from 'node:worker_threads';
import { describe, expect, it, onTestFinished } from 'vitest';
import { acquireAt, mutexAddress } from '../../electron/notebook/mutex.ts';
import { tempFolder } from './support.ts';

/** A bench that holds the address and is then killed; a socket file stays behind. */
async function killedHolder(address: string): Promise<void> {
  const program = `require('net').createServer().listen(${JSON.stringify(address)}, () => console.log('held'))`;
  const child = spawn(process.execPath, ['-e', program], { stdio: ['ignore', 'pipe', 'inherit'] });
  await once(child.stdout, 'data');
  child.kill('SIGKILL');
  await once(child, 'exit');
}

/** Where the operating system has no name that goes with its owner; any Unix has socket files, so this runs wherever those are. */
describe.runIf(process.platform !== 'win32')('A mutex that is a socket file', () => {
  it('is had by one, and by another when that one has let go', async () => {
    const address = path.join(tempFolder(), 'm.sock');
    const first = await acquireAt(address);
    expect(first).not.toBeNull();
    expect(await acquireAt(address)).toBeNull();
    await first?.release();
    const second = await acquireAt(address);
    expect(second).not.toBeNull();
    await second?.release();
  });

  it('is taken over from an owner that was killed, by one of several that want it at once', async () => {
    const address = path.join(tempFolder(), 'm.sock');
    await killedHolder(address);
    expect(fs.existsSync(address)).toBe(true);
    const got = (await Promise.all(Array.from({ length: 5 }, () => acquireAt(address)))).filter((mutex) => mutex !== null);
    expect(got).toHaveLength(1);
    expect(fs.readdirSync(path.dirname(address))).toEqual(['m.sock']);
    await got[0]?.release();
  });

  it('is left alone while another bench is taking it over, unless that one was killed over it long ago', async () => {
    const address = path.join(tempFolder(), 'm.sock');
    await killedHolder(address);
    fs.mkdirSync(`${address}.turn`);
    expect(await acquireAt(address)).toBeNull();
    const longAgo = new Date(Date.now() - 3_600_000);
    fs.utimesSync(`${address}.turn`, longAgo, longAgo);
    const mutex = await acquireAt(address);
    expect(mutex).not.toBeNull();
    await mutex?.release();
  });
});

describe('A mutex that was let go', () => {
  it('is had again at once, though a copy of this process may still hold its socket while it becomes another program', async () => {
    const spawner = new Worker(
      `const { spawn } = require('node:child_process');
       const go = () => spawn(process.execPath, ['--version'], { stdio: 'ignore' }).on('exit', go);
       for (let i = 0; i < 3; i++) go();`,
      { eval: true },
    );
    onTestFinished(async () => void (await spawner.terminate()));
    const address = mutexAddress(path.join(tempFolder(), 'a.sqlite'));
    for (let again = 0; again < 300; again++) {
      const mutex = await acquireAt(address);
      expect(mutex).not.toBeNull();
      await pause(1);
      await mutex?.release();
    }
  });
});

describe('The name of a mutex', () => {
  it('is the same by every road to a file, and another for another file', () => {
    const folder = tempFolder();
    const file = path.join(folder, 'a.sqlite');
    fs.writeFileSync(file, '');
    fs.symlinkSync(file, path.join(folder, 'link'));
    fs.symlinkSync(folder, path.join(folder, 'here'));
    const names = [file, path.join(folder, 'link'), path.join(folder, 'here', 'a.sqlite'), `${folder}/./x/../a.sqlite`];
    expect(new Set(names.map((name) => mutexAddress(name, 'linux'))).size).toBe(1);
    expect(mutexAddress(path.join(folder, 'b.sqlite'), 'linux')).not.toBe(mutexAddress(file, 'linux'));
  });

  it.each([
    ['linux', /^\0fistmele-[0-9a-f]{24}$/],
    ['win32', /^\\\\\.\\pipe\\fistmele-[0-9a-f]{24}$/],
    ['darwin', /[/\\]fistmele-[0-9a-f]{24}\.sock$/],
  ] as const)('on %s is of the kind that goes with its owner, or can be found dead', (platform, kind) => {
    expect(mutexAddress(path.join(tempFolder(), 'a.sqlite'), platform)).toMatch(kind);
  });
});
