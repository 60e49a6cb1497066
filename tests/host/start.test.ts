import { type ChildProcessByStdio, spawn, spawnSync } from 'node:child_process';
import { once } from 'node:events';
import fs from 'node:fs';
import path from 'node:path';
import { createInterface } from 'node:readline';
import type { Readable } from 'node:stream';
import { pathToFileURL } from 'node:url';
import { beforeAll, describe, expect, it, onTestFinished } from 'vitest';
import { openAddress } from '../../electron/launch/browser.mjs';
import { buildAll } from '../../electron/launch/build.mjs';
import { endOf } from '../../electron/launch/child.mjs';
import { smoke } from '../../electron/launch/smoke.mjs';
import { tempFolder, tempNotebook } from './support.ts';

const launch = path.join(import.meta.dirname, '../../electron/launch');
const START = path.join(launch, 'start.mjs');
const onUnix = process.platform !== 'win32';

/** As `npm start` would find things on a desktop without Electron, with this as the browser. */
const desktop = (browser: string, file = tempNotebook()): NodeJS.ProcessEnv => ({
  ...process.env,
  DISPLAY: ':0',
  FISTMELE_NOTEBOOK: file,
  FISTMELE_NO_ELECTRON: '1',
  FISTMELE_NO_BROWSER: '',
  FISTMELE_BROWSER: browser,
});

/** A program made for the moment. */
function script(text: string, mode = 0o755): string {
  const file = path.join(tempFolder(), 'program');
  fs.writeFileSync(file, `#!/bin/sh\n${text}\n`, { mode });
  return file;
}

interface Started {
  readonly child: ChildProcessByStdio<null, Readable, null>;
  readonly lines: string[];
  /** The first line that begins so, when it has been said. */
  line(begin: string): Promise<string>;
  end(): Promise<number | null>;
}
function started(args: readonly string[], env: NodeJS.ProcessEnv): Started {
  const child = spawn(process.execPath, args, { env, stdio: ['ignore', 'pipe', 'inherit'] });
  onTestFinished(() => void child.kill('SIGKILL'));
  const lines: string[] = [];
  createInterface({ input: child.stdout }).on('line', (line) => lines.push(line));
  return {
    child,
    lines,
    async line(begin) {
      await expect.poll(() => lines.filter((line) => line.startsWith(begin)), { timeout: 20_000 }).not.toEqual([]);
      return lines.find((line) => line.startsWith(begin)) ?? '';
    },
    async end() {
      if (child.exitCode === null) child.kill('SIGINT');
      const [code] = child.exitCode === null ? ((await once(child, 'exit')) as [number | null]) : [child.exitCode];
      return code;
    },
  };
}

beforeAll(() => buildAll({ onlyWhenStale: true }), 120_000);

describe('npm start -- --smoke', () => {
  it('says in exactly one line that the bench answers, and ends well', () => {
    const file = tempNotebook();
    const { status, stdout, stderr } = spawnSync(process.execPath, [START, '--smoke'], {
      env: { ...process.env, FISTMELE_NOTEBOOK: file },
      encoding: 'utf8',
      timeout: 30_000,
    });
    expect(stderr).toBe('');
    expect(stdout.split('\n')).toEqual([
      expect.stringMatching(/^Fistmele [\d.]+ answers; the notebook .* opens with 0 records\.$/),
      '',
    ]);
    expect(stdout).toContain(file);
    expect(status).toBe(0);
  });

  it('says in one line why the notebook does not open, and ends with 1', () => {
    const file = tempNotebook();
    fs.writeFileSync(file, 'a shopping list');
    const { status, stdout, stderr } = spawnSync(process.execPath, [START, '--smoke'], {
      env: { ...process.env, FISTMELE_NOTEBOOK: file },
      encoding: 'utf8',
      timeout: 30_000,
    });
    expect(stdout).toBe('');
    expect(stderr).toMatch(/^The bench does not start: .* is not a Fistmele notebook\..*\n$/);
    expect(status).toBe(1);
  });
});

describe.runIf(onUnix)('npm start', () => {
  it.each([
    ['ends at once with an error', 'exit 3', 0o755, /it ended with 3/],
    ['is killed at once', 'kill -9 $$', 0o755, /it was ended by SIGKILL/],
    ['cannot be started', 'exit 0', 0o644, /EACCES/],
  ])('with a browser that %s says so and offers an address; the bench stays', async (_what, text, mode, why) => {
    const browser = script(text, mode);
    const bench = started([START], desktop(browser));
    expect(await bench.line('The browser')).toMatch(why);
    expect(await smoke(await bench.line('http://127.0.0.1:'))).toMatchObject({ records: 0 });
    expect(await bench.end()).toBe(0);
  });

  it('stops when its window is closed, however soon', async () => {
    const bench = started([START], desktop(script('exit 0')));
    const [code] = (await once(bench.child, 'exit')) as [number];
    expect(code).toBe(0);
    expect(bench.lines.at(-1)).toMatch(/^The bench is open in a window of its own/);
  });

  it('takes its window and its profile with it when it is asked to end', async () => {
    const seen = path.join(tempFolder(), 'seen');
    const bench = started([START], desktop(script(`echo "$$ $2" > ${seen}.new && mv ${seen}.new ${seen}; exec sleep 60`)));
    await expect.poll(() => fs.existsSync(seen), { timeout: 20_000 }).toBe(true);
    const [pid = '', profile = ''] = fs.readFileSync(seen, 'utf8').trim().split(' ');
    expect(profile).toMatch(/^--user-data-dir=.*fistmele-window-/);
    expect(await bench.end()).toBe(0);
    expect(fs.existsSync(profile.slice('--user-data-dir='.length))).toBe(false);
    expect(() => process.kill(Number(pid), 0)).toThrow('ESRCH');
  });

  it('with an Electron that ends at once says so and offers an address; the bench stays', async () => {
    const opening = `import(${JSON.stringify(pathToFileURL(path.join(launch, 'open.mjs')).href)}).then((m) => m.runElectron(process.argv[1]))`;
    for (const program of [script('exit 127'), path.join(tempFolder(), 'not there')]) {
      const bench = started(['-e', opening, program], { ...desktop(''), FISTMELE_NO_BROWSER: '1' });
      expect(await bench.line('Electron')).toMatch(
        /^Electron does not run here \((it ended with 127|.*ENOENT.*)\); the bench opens/,
      );
      expect(await smoke(await bench.line('http://127.0.0.1:'))).toMatchObject({ records: 0 });
      expect(await bench.end()).toBe(0);
    }
  });

  it('goes on when whoever read its lines has gone', async () => {
    const bench = started([START], { ...desktop(''), FISTMELE_NO_BROWSER: '1' });
    const address = await bench.line('http://127.0.0.1:');
    bench.child.stdout.destroy();
    expect(await smoke(address)).toMatchObject({ records: 0 });
    expect(await bench.end()).toBe(0);
  });

  it('on an old Node says in one line which was expected', () => {
    const old = "Object.defineProperty(process.versions, 'node', { value: '18.20.4' });";
    const program = `${old} import(${JSON.stringify(pathToFileURL(START).href)})`;
    const { status, stdout, stderr } = spawnSync(process.execPath, ['-e', program], {
      encoding: 'utf8',
      env: desktop(''),
      timeout: 30_000,
    });
    expect(stdout).toBe('');
    expect(stderr).toMatch(/^Node 20\.19 or later was expected; this is 18\.20\.4\..*\n$/);
    expect(status).toBe(1);
  });
});

describe.runIf(onUnix)('The end of a program that was started', () => {
  it.each([
    ['that ends well', 'exit 0', { code: 0, isEarly: false }],
    ['that fails at once', 'exit 7', { code: 7, why: 'it ended with 7', isEarly: true }],
    ['that dies of a signal, which is no success', 'kill -15 $$', { code: 143, why: 'it was ended by SIGTERM', isEarly: true }],
  ])('is told of one %s', async (_what, text, end) => {
    expect(await endOf(spawn(script(text)))).toMatchObject(end);
  });

  it('is told of one that cannot be started, and of one that fails after a while', async () => {
    expect(await endOf(spawn(path.join(tempFolder(), 'not there')))).toMatchObject({ code: 1, isEarly: true });
    expect(await endOf(spawn(script('exit 7')), 0)).toMatchObject({ code: 7, isEarly: false });
  });
});

describe.runIf(process.platform === 'linux')("The user's own browser", () => {
  it('is asked for by the desktop, and it is known whether that failed', async () => {
    const folder = tempFolder();
    const before = process.env['PATH'];
    onTestFinished(() => void (process.env['PATH'] = before));
    process.env['PATH'] = folder;
    expect(await openAddress('http://127.0.0.1:1/#code=x'), 'no way to ask').toBe(false);
    const opener = path.join(folder, 'xdg-open');
    fs.writeFileSync(opener, `#!/bin/sh\necho "$1" > ${folder}/asked\n`, { mode: 0o755 });
    expect(await openAddress('http://127.0.0.1:1/#code=x')).toBe(true);
    expect(fs.readFileSync(path.join(folder, 'asked'), 'utf8')).toBe('http://127.0.0.1:1/#code=x\n');
    fs.writeFileSync(opener, '#!/bin/sh\nexit 3\n', { mode: 0o755 });
    expect(await openAddress('http://127.0.0.1:1/#code=x')).toBe(false);
  });
});
