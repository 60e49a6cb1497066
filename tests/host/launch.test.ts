import { spawn } from 'node:child_process';
import fs from 'node:fs';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { buildProgram } from '../../electron/launch/build.mjs';
import { startHost } from '../../electron/launch/host.mjs';
import { smoke } from '../../electron/launch/smoke.mjs';
import { openedToClose, tempNotebook } from './support.ts';

/** The built host, with a page of one line: what `npm start` and the browser tests start. */
const dist = path.join(import.meta.dirname, `../../.cache/launch-${process.pid}/dist`);
const program = path.join(dist, 'electron/host.js');
beforeAll(async () => {
  await buildProgram('electron/loopback/main.ts', program);
  await buildProgram('electron/worker.ts', path.join(dist, 'electron/worker.js'));
  fs.writeFileSync(path.join(dist, '../package.json'), '{ "version": "4.5.6", "type": "module" }');
  fs.mkdirSync(path.join(dist, 'renderer'));
  fs.writeFileSync(path.join(dist, 'renderer/index.html'), '<script type="module" src="x.js"></script>');
});
afterAll(() => fs.rmSync(path.dirname(dist), { recursive: true }));
const on = (file: string) => ({ program, env: { ...process.env, FISTMELE_NOTEBOOK: file } });

describe('The host as a program', () => {
  it('answers the smoke test, gives a new address when asked, and ends with a closed notebook', async () => {
    const file = tempNotebook();
    const host = await startHost(on(file));
    expect(await smoke(host.address)).toEqual({ version: '4.5.6', file, records: 0 });
    await expect(smoke(host.address), 'its address works once').rejects.toThrow('401');
    expect(await smoke(await host.newAddress())).toMatchObject({ file });
    expect(await host.stop()).toBe(0);
    expect(fs.existsSync(`${file}-wal`)).toBe(false);
    expect((await openedToClose(file)).notebook.load().records).toEqual([]);
  });

  it('fails the smoke test with a sentence when the notebook cannot be opened', async () => {
    const file = tempNotebook();
    fs.writeFileSync(file, 'a shopping list');
    const host = await startHost(on(file));
    await expect(smoke(host.address)).rejects.toThrow(/is not a Fistmele notebook/);
    expect(await host.stop()).toBe(0);
  });

  it.skipIf(process.platform === 'win32')('ends cleanly on Ctrl+C, and when it is asked to', async () => {
    for (const end of ['SIGINT', 'SIGTERM'] as const) {
      const file = tempNotebook();
      const host = await startHost(on(file));
      await smoke(host.address);
      process.kill(host.pid, end);
      expect(await host.ended, end).toBe(0);
      expect(fs.existsSync(`${file}-wal`), end).toBe(false);
    }
  });

  it('does not outlive a starter that was killed', async () => {
    const file = tempNotebook();
    const launcher = path.join(dist, 'starter.mjs');
    const module = path.join(import.meta.dirname, '../../electron/launch/host.mjs');
    fs.writeFileSync(
      launcher,
      `import { startHost } from ${JSON.stringify(module)};
       const host = await startHost({ program: ${JSON.stringify(program)} });
       console.log(host.pid);`,
    );
    const starter = spawn(process.execPath, [launcher], { env: on(file).env, stdio: ['ignore', 'pipe', 'inherit'] });
    const pid = Number(await new Promise((said) => starter.stdout.once('data', (line: Buffer) => said(line.toString()))));
    starter.kill('SIGKILL');
    await expect.poll(() => isRunning(pid), { timeout: 10_000 }).toBe(false);
  });
});

function isRunning(pid: number): boolean {
  try {
    return process.kill(pid, 0);
  } catch {
    return false;
  }
}
