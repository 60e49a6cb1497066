import fs from 'node:fs';
import path from 'node:path';
import fc from 'fast-check';
import { beforeEach, describe, expect, it, onTestFinished } from 'vitest';
import { FileKind, fileName, FileSaved, FileToSave } from '../../core/files.ts';
import { createBench } from '../../electron/bench.ts';
import { prepare, runDesk } from '../../electron/desk.ts';
import { writeFile } from '../../electron/files/write.ts';
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

const drawing = { name: 'Bow - force and draw.svg', kind: 'svg', data: '<svg>“ä”</svg>' } as const;
const ask = (input: unknown) =>
  electron.handlers.get('files.save')?.(
    { sender: electron.windows[0], senderFrame: { parent: null, url: 'app://bench/index.html' } },
    input,
  ) as Promise<{ ok: boolean; value?: unknown; problem?: { code: string; sentence: string } }>;
const answering = (...names: string[]) => {
  electron.whereTo = () => Promise.resolve({ canceled: false, filePath: path.join(folder, ...names) });
};
/** What stands in the folder beside the notebook. */
const files = () => fs.readdirSync(folder).filter((name) => !name.startsWith('notebook'));
const sentenceOf = (answer: Awaited<ReturnType<typeof ask>>) => answer.problem?.sentence ?? 'no refusal';

describe('Saving a file from the desktop shell', () => {
  it('asks over the window that wants it, with the name, the kind and the question before a file gives way', async () => {
    answering('out.svg');
    expect(await ask(drawing)).toEqual({ ok: true, value: { outcome: 'saved', name: 'out.svg' } });
    expect(electron.asked).toEqual([
      {
        window: { webContents: electron.windows[0] },
        options: {
          defaultPath: 'Bow - force and draw.svg',
          filters: [{ name: 'SVG drawing', extensions: ['svg'] }],
          properties: ['createDirectory', 'showOverwriteConfirmation'],
        },
      },
    ]);
    expect(fs.readFileSync(path.join(folder, 'out.svg'), 'utf8')).toBe(drawing.data);
    expect(files()).toEqual(['out.svg']);
  });

  it('writes a picture as the bytes that it is', async () => {
    answering('picture.png');
    const bytes = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 255]);
    expect(await ask({ name: 'picture.png', kind: 'png', data: bytes.toString('base64') })).toMatchObject({ ok: true });
    expect(fs.readFileSync(path.join(folder, 'picture.png'))).toEqual(bytes);
  });

  it('writes nothing when the dialog is put away', async () => {
    expect(await ask(drawing)).toEqual({ ok: true, value: { outcome: 'cancelled', name: drawing.name } });
    expect(files()).toEqual([]);
  });

  it('lets an old file give way under the very name that was asked about', async () => {
    fs.writeFileSync(path.join(folder, 'out.svg'), 'old');
    answering('out.svg');
    expect(await ask(drawing)).toMatchObject({ ok: true });
    expect(fs.readFileSync(path.join(folder, 'out.svg'), 'utf8')).toBe(drawing.data);
    expect(files()).toEqual(['out.svg']);
  });

  it('adds the ending that a name lacks, and then lets nothing give way: nobody was asked about that name', async () => {
    answering('out');
    expect(await ask(drawing)).toEqual({ ok: true, value: { outcome: 'saved', name: 'out.svg' } });
    fs.writeFileSync(path.join(folder, 'out.svg'), 'mine');
    const second = await ask(drawing);
    expect(sentenceOf(second)).toMatch(/^“out\.svg” was not saved: a file of that name is there already and stays as it is/);
    expect(fs.readFileSync(path.join(folder, 'out.svg'), 'utf8')).toBe('mine');
  });

  it('takes a point within a name for no ending, and an ending in capitals for one', async () => {
    for (const [chosen, saved] of [
      ['Tobin 38.5 lb', 'Tobin 38.5 lb.svg'],
      ['out.SVG', 'out.SVG'],
    ] as const) {
      answering(chosen);
      expect(await ask(drawing)).toEqual({ ok: true, value: { outcome: 'saved', name: saved } });
    }
    expect(files()).toEqual(['Tobin 38.5 lb.svg', 'out.SVG']);
  });

  it('says in a sentence why a file could not be written, and leaves no half of one', async () => {
    fs.mkdirSync(path.join(folder, 'taken.svg'));
    fs.writeFileSync(path.join(folder, 'a-file'), '');
    for (const [names, expected] of [
      [['nowhere', 'out.svg'], /that folder is no longer there\. Choose another\.$/],
      [['a-file', 'out.svg'], /that folder is no longer there\. Choose another\.$/],
      [['taken.svg'], /that is a folder\. Choose a name for a file\.$/],
      [[`${'x'.repeat(300)}.svg`, 'out.svg'], /its name is too long there\. Choose a shorter one\.$/],
    ] as const) {
      answering(...names);
      const answer = await ask(drawing);
      expect(answer, names.join('/')).toMatchObject({ ok: false, problem: { code: 'not-saved' } });
      expect(sentenceOf(answer)).toMatch(expected);
    }
    expect(files()).toEqual(['a-file', 'taken.svg']);
    expect(fs.readdirSync(path.join(folder, 'taken.svg'))).toEqual([]);
  });

  it('leaves the old file whole where the folder allows no writing', async () => {
    const locked = path.join(folder, 'locked');
    fs.mkdirSync(locked);
    fs.writeFileSync(path.join(locked, 'out.svg'), 'old');
    fs.chmodSync(locked, 0o500);
    onTestFinished(() => fs.chmodSync(locked, 0o700));
    const answer = await writeFile(path.join(locked, 'out.svg'), drawing);
    // The system's own administrator may write anywhere; for everybody else the sentence says what to do.
    if (process.getuid?.() === 0) expect(answer.ok).toBe(true);
    else
      expect(answer).toMatchObject({ ok: false, problem: { sentence: expect.stringMatching(/nothing may be written there/) } });
    expect(fs.readFileSync(path.join(locked, 'out.svg'), 'utf8')).toBe(answer.ok ? drawing.data : 'old');
  });

  it('puts one question at a time to a window', async () => {
    let close: (answer: { canceled: boolean; filePath: string }) => void = () => {};
    electron.whereTo = () => new Promise((resolve) => (close = resolve));
    const first = ask(drawing);
    expect(sentenceOf(await ask(drawing))).toMatch(/still asking where to save another file/);
    close({ canceled: true, filePath: '' });
    expect(await first).toMatchObject({ ok: true });
    answering('out.svg');
    expect(await ask(drawing)).toMatchObject({ ok: true });
  });

  it('never opens a dialog for what is no file', async () => {
    const bad: unknown[] = [
      null,
      {},
      { ...drawing, name: '../../etc/passwd.svg' },
      { ...drawing, name: 'C:\\boot.svg' },
      { ...drawing, name: '.hidden.svg' },
      { ...drawing, name: 'con.svg' },
      { ...drawing, name: '' },
      { ...drawing, name: 'gpj\u202e.svg' },
      { ...drawing, kind: 'exe' },
      { ...drawing, data: 5 },
      { ...drawing, folder: '/' },
      { name: 'p.png', kind: 'png', data: 'no base64!' },
    ];
    for (const input of bad) {
      expect(sentenceOf(await ask(input)), JSON.stringify(input)).toMatch(/Nothing was written\.$/);
    }
    expect(electron.asked).toEqual([]);
    expect(files()).toEqual([]);
  });

  it('says what is too large, and writes none of it', async () => {
    const answer = await ask({ ...drawing, data: 'x'.repeat(16 * 1024 * 1024 + 1) });
    expect(sentenceOf(answer)).toMatch(/^This file is larger than 16 MiB/);
  });
});

/** Any text at all, halves of surrogate pairs and control characters too. */
const anyText = fc
  .array(fc.oneof(fc.integer({ min: 0, max: 0x7f }), fc.integer({ min: 0, max: 0xffff })), { maxLength: 40 })
  .map((codes) => String.fromCharCode(...codes));

describe('A file’s name made of people’s own names', () => {
  it('is one that every system takes, whatever the names are', () => {
    const words = fc.array(fc.oneof(fc.string(), anyText, fc.constantFrom('CON', '..', 'a/b', ' ', 'x\u202egvs')));
    fc.assert(
      fc.property(words, fc.constantFrom(...FileKind.options), (names, kind) => {
        const name = fileName(names, kind);
        expect(FileToSave.safeParse({ name, kind, data: '' }).success, JSON.stringify([names, name])).toBe(true);
        expect(name.endsWith(`.${kind}`)).toBe(true);
      }),
      { numRuns: 200, seed: 13 },
    );
  });

  it('keeps what can be kept', () => {
    expect(fileName(['Tobin’s 68/36', 'force and draw'], 'svg')).toBe('Tobin’s 68-36 - force and draw.svg');
    expect(fileName(['', '  '], 'csv')).toBe('Fistmele.csv');
    expect(FileSaved.safeParse({ outcome: 'downloading', name: fileName(['x'], 'png') }).success).toBe(true);
  });
});
