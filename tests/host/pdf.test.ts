import fs from 'node:fs';
import path from 'node:path';
import { beforeEach, describe, expect, it, onTestFinished, vi } from 'vitest';
import { createBench } from '../../electron/bench.ts';
import { prepare, runDesk } from '../../electron/desk.ts';
import { ElectronDouble } from './electronDouble.ts';
import { tempFolder } from './support.ts';

let electron: ElectronDouble;
let folder: string;

beforeEach(async () => {
  electron = new ElectronDouble();
  folder = tempFolder();
  const bench = createBench({ file: path.join(folder, 'notebook.sqlite'), shell: 'electron', version: '0' });
  onTestFinished(() => bench.close());
  prepare(electron.parts, path.join(folder, 'notebook.sqlite'));
  await runDesk(electron.parts, { folder: path.join(folder, 'electron'), makeBench: () => bench });
});

const strip = { name: 'Outdoor - sight strip.pdf' } as const;
const ourPage = { parent: null, url: 'app://bench/index.html' };
const ask = (input: unknown, senderFrame: unknown = ourPage, channel = 'files.pdf') =>
  electron.handlers.get(channel)?.({ sender: electron.windows[0], senderFrame }, input) as Promise<{
    ok: boolean;
    value?: unknown;
    problem?: { code: string; sentence: string };
  }>;
const answering = (name: string) => {
  electron.whereTo = () => Promise.resolve({ canceled: false, filePath: path.join(folder, name) });
};
const files = () => fs.readdirSync(folder).filter((name) => !name.startsWith('notebook'));
const printed = () => electron.windows[0]?.printed ?? [];

describe('Printing a page into a PDF from the desktop shell', () => {
  it('asks once where it goes and writes what Electron printed, byte for byte', async () => {
    answering('strip.pdf');
    const bytes = Buffer.from([0x25, 0x50, 0x44, 0x46, 0, 255, 254, 10]);
    (electron.windows[0] as ElectronDouble['windows'][number]).prints = () => Promise.resolve(bytes);
    expect(await ask(strip)).toEqual({ ok: true, value: { outcome: 'saved', name: 'strip.pdf' } });
    expect(electron.asked).toEqual([
      {
        window: { webContents: electron.windows[0] },
        options: {
          defaultPath: 'Outdoor - sight strip.pdf',
          filters: [{ name: 'PDF document', extensions: ['pdf'] }],
          properties: ['createDirectory', 'showOverwriteConfirmation'],
        },
      },
    ]);
    expect(fs.readFileSync(path.join(folder, 'strip.pdf'))).toEqual(bytes);
    expect(files()).toEqual(['strip.pdf']);
  });

  it('takes the sheet’s own size with no edge of its own, so that what is true to size stays so', async () => {
    await ask(strip);
    expect(printed()).toEqual([
      { preferCSSPageSize: true, printBackground: true, scale: 1, margins: { top: 0, bottom: 0, left: 0, right: 0 } },
    ]);
  });

  it('prints before it asks, since the page may change while the question stands', async () => {
    const order: string[] = [];
    (electron.windows[0] as ElectronDouble['windows'][number]).prints = () => {
      order.push('printed');
      return Promise.resolve(Buffer.from('x'));
    };
    electron.whereTo = () => {
      order.push('asked');
      return Promise.resolve({ canceled: true, filePath: '' });
    };
    await ask(strip);
    expect(order).toEqual(['printed', 'asked']);
  });

  it('writes nothing when the dialog is put away', async () => {
    expect(await ask(strip)).toEqual({ ok: true, value: { outcome: 'cancelled', name: strip.name } });
    expect(files()).toEqual([]);
  });

  it('adds the ending that a name lacks', async () => {
    answering('Tobin 38.5 lb');
    expect(await ask(strip)).toEqual({ ok: true, value: { outcome: 'saved', name: 'Tobin 38.5 lb.pdf' } });
  });

  it('puts one question at a time to a window, whichever kind of file it is about', async () => {
    let close: (answer: { canceled: boolean; filePath: string }) => void = () => {};
    electron.whereTo = () => new Promise((resolve) => (close = resolve));
    const first = ask(strip);
    await vi.waitFor(() => expect(electron.asked).toHaveLength(1));
    const drawing = { name: 'strip.svg', kind: 'svg', data: '<svg/>' };
    expect((await ask(strip)).problem?.sentence).toMatch(/still asking where to save another file/);
    expect((await ask(drawing, ourPage, 'files.save')).problem?.sentence).toMatch(/still asking where to save another file/);
    close({ canceled: true, filePath: '' });
    expect(await first).toMatchObject({ ok: true });
    expect(electron.asked).toHaveLength(1);
  });

  it('says in a sentence that a page could not be printed, and asks nothing then', async () => {
    (electron.windows[0] as ElectronDouble['windows'][number]).prints = () => Promise.reject(new Error('printer is busy'));
    const quiet = vi.spyOn(console, 'error').mockImplementation(() => {});
    onTestFinished(() => quiet.mockRestore());
    expect(await ask(strip)).toMatchObject({
      ok: false,
      problem: { code: 'not-printed', sentence: expect.stringMatching(/^The page could not be made into a PDF\./) },
    });
    expect(electron.asked).toEqual([]);
    answering('strip.pdf');
    (electron.windows[0] as ElectronDouble['windows'][number]).prints = () => Promise.resolve(Buffer.from('x'));
    expect(await ask(strip)).toMatchObject({ ok: true });
  });

  it('says why a file could not be written', async () => {
    fs.mkdirSync(path.join(folder, 'taken.pdf'));
    answering('taken.pdf');
    expect((await ask(strip)).problem?.sentence).toMatch(/^“taken\.pdf” was not saved: that is a folder/);
  });

  it('prints nothing for a caller that is not a page of the bench', async () => {
    for (const frame of [null, { parent: {}, url: ourPage.url }, { parent: null, url: 'https://elsewhere.test/' }])
      await expect(ask(strip, frame)).rejects.toThrow('not a page of the bench');
    expect(printed()).toEqual([]);
    expect(electron.asked).toEqual([]);
  });

  it('prints nothing under what is no name of a PDF', async () => {
    const bad: unknown[] = [
      null,
      {},
      { name: 'strip.exe' },
      { name: '../strip.pdf' },
      { name: '.pdf' },
      { ...strip, url: 'https://x' },
    ];
    for (const input of bad) expect(await ask(input), JSON.stringify(input)).toMatchObject({ ok: false });
    expect(printed()).toEqual([]);
    expect(electron.asked).toEqual([]);
  });
});
