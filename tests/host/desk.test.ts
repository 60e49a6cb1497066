import fs from 'node:fs';
import path from 'node:path';
import { beforeAll, beforeEach, describe, expect, it, onTestFinished, vi } from 'vitest';
import { channels } from '../../core/channels.ts';
import { createBench } from '../../electron/bench.ts';
import { prepare, runDesk } from '../../electron/desk.ts';
import { menuTemplate } from '../../electron/menu.ts';
import { ElectronDouble, inventsNothing } from './electronDouble.ts';
import { anArcher, change, tempFolder } from './support.ts';

let electron: ElectronDouble;
let folder: string;

async function startDesk(double = new ElectronDouble()): Promise<ElectronDouble> {
  folder = tempFolder();
  fs.mkdirSync(path.join(folder, 'renderer'));
  fs.mkdirSync(path.join(folder, 'electron'));
  fs.writeFileSync(path.join(folder, 'renderer/index.html'), '<p>bench');
  fs.writeFileSync(path.join(folder, 'outside.js'), 'outside');
  fs.symlinkSync(path.join(folder, 'outside.js'), path.join(folder, 'renderer/link.js'));
  const bench = createBench({ file: path.join(folder, 'notebook.sqlite'), shell: 'electron', version: '0' });
  onTestFinished(() => bench.close());
  prepare(double.parts, path.join(folder, 'notebook.sqlite'));
  await runDesk(double.parts, { folder: path.join(folder, 'electron'), makeBench: () => bench });
  return double;
}
beforeAll(() => expect(inventsNothing).toBe(true));
beforeEach(async () => {
  electron = await startDesk();
});

const fromOurPage = (sender: unknown = electron.windows[0]) => ({
  sender,
  senderFrame: { parent: null, url: 'app://bench/index.html' },
});
const prevented = (event: object = {}) => Object.assign({ preventDefault: vi.fn() }, event);

describe('The desktop shell', () => {
  it('registers its scheme and the sandbox before Electron is ready', () => {
    expect(electron.schemes).toEqual([{ scheme: 'app', privileges: { standard: true, secure: true, supportFetchAPI: true } }]);
    expect(electron.isSandboxed).toBe(true);
  });

  it('opens one window on its own page, isolated and in the sandbox', () => {
    expect(electron.windows).toHaveLength(1);
    expect(electron.windows[0]).toMatchObject({ url: 'app://bench/index.html', shown: true });
    expect(electron.windows[0]?.options.webPreferences).toEqual({
      preload: path.join(folder, 'electron/preload.cjs'),
      contextIsolation: true,
      sandbox: true,
      nodeIntegration: false,
      nodeIntegrationInWorker: false,
      nodeIntegrationInSubFrames: false,
      webSecurity: true,
      allowRunningInsecureContent: false,
      experimentalFeatures: false,
      webviewTag: false,
      navigateOnDragDrop: false,
      spellcheck: false,
    });
  });

  it('grants no permission and no device', () => {
    for (const permission of ['media', 'geolocation', 'notifications', 'clipboard-read', 'openExternal']) {
      const grant = vi.fn();
      electron.permission?.({}, permission, grant);
      expect(grant.mock.calls, permission).toEqual([[false]]);
    }
    expect(electron.permissionCheck?.()).toBe(false);
    expect(electron.devicePermission?.()).toBe(false);
  });

  it.each([
    ['app://bench/index.html', false],
    ['app://bench/assets/x.js', false],
    ['https://example.com/', true],
    ['http://127.0.0.1/', true],
    ['file:///etc/passwd', true],
    ['app://bench.elsewhere.test/', true],
    ['app://elsewhere/', true],
    ['app://someone@bench/', true],
    ['data:text/html,hello', true],
    ['nonsense', true],
  ])('lets nothing be loaded from outside: %s', (url, cancel) => {
    const decide = vi.fn();
    electron.beforeRequest?.({ url }, decide);
    expect(decide.mock.calls).toEqual([[{ cancel }]]);
  });

  it('lets no page go elsewhere, open a window, embed another page or download', () => {
    const contents = electron.windows[0];
    for (const [url, stopped] of [
      ['https://evil.test/', 1],
      ['javascript:alert(1)', 1],
      ['file:///', 1],
      ['app://bench/index.html', 0],
    ] as const) {
      const event = prevented({ url });
      expect(contents?.say('will-navigate', event)).toBe(1);
      expect(event.preventDefault, url).toHaveBeenCalledTimes(stopped);
    }
    for (const [name, details, stopped] of [
      ['will-redirect', {}, 1],
      ['will-attach-webview', {}, 1],
      ['will-frame-navigate', { isMainFrame: false }, 1],
      ['will-frame-navigate', { isMainFrame: true }, 0],
    ] as const) {
      const event = prevented(details);
      expect(contents?.say(name, event), name).toBe(1);
      expect(event.preventDefault, name).toHaveBeenCalledTimes(stopped);
    }
    const download = prevented();
    electron.defaultSession.say('will-download', download);
    expect(download.preventDefault).toHaveBeenCalledOnce();
    for (const url of ['https://evil.test', 'app://bench/index.html'])
      expect(contents?.openHandler?.({ url })).toEqual({ action: 'deny' });
  });

  it('serves its page under app:// with the policy, and nothing from outside its folder', async () => {
    const serve = electron.protocols.get('app');
    const page = await serve?.(new Request('app://bench/'));
    expect(page?.status).toBe(200);
    expect(await page?.text()).toBe('<p>bench');
    expect(page?.headers.get('content-type')).toBe('text/html; charset=utf-8');
    expect(page?.headers.get('content-security-policy')).toMatch(/^default-src 'none'; script-src 'self';/);
    for (const url of [
      'app://bench/..%2foutside.js',
      'app://bench/%2e%2e%2foutside.js',
      'app://bench/link.js',
      'app://elsewhere/index.html',
      'app://bench/nothing.js',
    ]) {
      expect((await serve?.(new Request(url)))?.status, url).toBe(404);
    }
    expect((await serve?.(new Request('app://bench/', { method: 'POST' })))?.status).toBe(404);
  });

  it('answers exactly the calls of the contract', async () => {
    expect([...electron.handlers.keys()].sort()).toEqual([...channels].sort());
    expect(await electron.handlers.get('bench.info')?.(fromOurPage(), null)).toMatchObject({
      ok: true,
      value: { shell: 'electron' },
    });
    expect(await electron.handlers.get('notebook.load')?.(fromOurPage(), { book: 'no such' })).toMatchObject({ ok: false });
  });

  it.each([
    ['a frame that is gone', null],
    ['a frame within a page', { parent: {}, url: 'app://bench/index.html' }],
    ['a page from elsewhere', { parent: null, url: 'https://evil.test/' }],
    ['a page whose name only begins like ours', { parent: null, url: 'app://bench.evil.test/' }],
  ])('answers no call from %s', async (_what, senderFrame) => {
    for (const handler of electron.handlers.values()) {
      await expect(handler({ sender: electron.windows[0], senderFrame }, null)).rejects.toThrow('not a page of the bench');
    }
  });

  it('tells its other windows of a write, and not the one that wrote', async () => {
    electron.app.say('second-instance');
    expect(electron.windows).toHaveLength(2);
    const reply = await electron.handlers.get('notebook.apply')?.(fromOurPage(), {
      book: 'own',
      change: change(null, anArcher(1)),
    });
    expect(reply).toMatchObject({ ok: true });
    expect(electron.windows.map(({ sent }) => sent.length)).toEqual([0, 1]);
    expect(electron.windows[1]?.sent[0]).toEqual([
      'bench.event',
      { event: 'notebook.changed', book: 'own', written: (reply as { value: unknown }).value },
    ]);
  });

  it('closes the notebook before it quits', async () => {
    const quitting = prevented();
    electron.app.say('will-quit', quitting);
    expect(quitting.preventDefault).toHaveBeenCalledOnce();
    await vi.waitFor(() => expect(electron.quits).toBe(1));
    const again = prevented();
    electron.app.say('will-quit', again);
    expect(again.preventDefault).not.toHaveBeenCalled();
    const held = createBench({ file: path.join(folder, 'notebook.sqlite'), shell: 'loopback', version: '0' });
    expect((await held.call('bench.info', null)).reply).toMatchObject({ value: { notebook: { problem: null } } });
    await held.close();
  });

  it('that is not the first of its kind leaves at once, without a window and without touching the notebook', async () => {
    const second = new ElectronDouble();
    second.isFirst = false;
    await startDesk(second);
    expect(second.quits).toBe(1);
    expect(second.windows).toHaveLength(0);
    expect(second.handlers.size).toBe(0);
  });
});

describe('Two starts of the shell', () => {
  const dataFolder = (notebook: string) => {
    const double = new ElectronDouble();
    prepare(double.parts, notebook);
    return double.paths.get('userData');
  };

  it('share one data folder, and so the lock, on the same notebook, and have two on two', () => {
    const a = path.join(folder, 'not there yet', 'a.sqlite');
    expect(dataFolder(a)).toMatch(/^user-data[/\\]notebook-[0-9a-f]{24}$/);
    expect(dataFolder(path.join(folder, '.', 'not there yet', 'a.sqlite'))).toBe(dataFolder(a));
    expect(dataFolder(path.join(folder, 'b.sqlite'))).not.toBe(dataFolder(a));
    const before = dataFolder(a);
    fs.mkdirSync(path.dirname(a));
    fs.writeFileSync(a, '');
    expect(dataFolder(a), 'once it is there').toBe(before);
  });

  it('ask for the lock only when the folder is named', () => {
    expect(electron.lockedIn).toMatch(/notebook-/);
  });
});

describe('The menu', () => {
  it('leaves undo and redo to the bench on every platform', () => {
    for (const platform of ['linux', 'win32', 'darwin'] as const) {
      const roles = JSON.stringify(menuTemplate(platform, () => {}));
      expect(roles).toContain('"role":"copy"');
      expect(roles).not.toMatch(/"role":"(undo|redo|editMenu)"/);
    }
  });
});
