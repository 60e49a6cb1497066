import { execFileSync } from 'node:child_process';
import fs from 'node:fs';
import path from 'node:path';
import { BenchRecord, exampleBundle, type Change, type Result, type Setup } from '../../core/model/index.ts';
import { openNotebook, type OpenNotebook } from '../../electron/notebook/open.ts';
import { median, row, timed, type Row } from './row.ts';
import { groupOf } from './shots.ts';
import { sink } from './timing.ts';

const ROUNDS = 9;
const MB = 1e6;
const now = () => ({ at: '2026-06-01T10:00:00Z', offsetMinutes: 60 });

function valueOf<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(result.problem.sentence);
  return result.value;
}

const open = async (file: string): Promise<OpenNotebook> => valueOf(await openNotebook(file, { now }));

const birthOf = (record: BenchRecord): Change => ({
  label: 'Bench',
  edits: [{ id: record.id, before: null, after: record }],
});

async function secondsOf(work: () => unknown): Promise<number> {
  const began = performance.now();
  await work();
  return (performance.now() - began) / 1000;
}

/** As many bytes as plain files take, down to the disk: what any durable write costs at least. */
function bareWrite(file: string, bytes: Buffer): void {
  const handle = fs.openSync(file, 'a');
  fs.writeSync(handle, bytes);
  fs.fsyncSync(handle);
  fs.closeSync(handle);
}

/** One group of 100,000 shots: written, opened again and loaded, and what its text costs to read. */
async function largeRows(folder: string): Promise<Row[]> {
  const group = groupOf(100_000, 1);
  const text = JSON.stringify(group);
  const bytes = Buffer.from(text);
  const times = { written: [], bare: [], opened: [], parsed: [], read: [] } as Record<string, number[]>;
  const file = (round: number) => path.join(folder, `large-${round}.sqlite`);
  for (let round = 0; round <= ROUNDS; round++) {
    const time = async (key: string, work: () => unknown) => times[key]?.push(await secondsOf(work));
    const bench = await open(file(round));
    await time('written', () => valueOf(bench.notebook.apply(birthOf(group))));
    await bench.close();
    await time('bare', () => bareWrite(path.join(folder, `large-${round}.json`), bytes));
    let again: OpenNotebook | null = null;
    await time('opened', async () => {
      again = await open(file(round));
      sink.last = again.notebook.load();
    });
    await (again as OpenNotebook | null)?.close();
    await time('parsed', () => (sink.last = BenchRecord.parse(JSON.parse(text))));
    await time('read', () => (sink.last = JSON.parse(text) as unknown));
  }
  const of = (key: string) => median((times[key] ?? []).slice(1)); // the first round warms up
  const read = of('read');
  const inMs = (id: string, seconds: number, reference: number) => row(id, 1000 * seconds, 'ms', 1000 * reference);
  return [
    row('notebook.100000.text', bytes.length / MB, 'MB'),
    row('notebook.100000.file', fs.statSync(file(1)).size / MB, 'MB', bytes.length / MB),
    inMs('notebook.100000.written', of('written'), of('bare')),
    inMs('notebook.100000.opened', of('opened'), read),
    inMs('notebook.100000.parsed', of('parsed'), read),
    ...memoryRows(file(1), read),
  ];
}

interface Opening {
  readonly seconds: number;
  readonly peak: number;
  readonly before: { readonly rss: number; readonly heapUsed: number };
  readonly after: { readonly rss: number; readonly heapUsed: number };
}

/** Each time in a fresh process: what opening costs when the bench has just been started. */
function memoryRows(file: string, read: number): Row[] {
  const program = path.join(import.meta.dirname, 'opening.js');
  const runs = Array.from(
    { length: ROUNDS },
    () => JSON.parse(execFileSync(process.execPath, ['--expose-gc', program, file], { encoding: 'utf8' })) as Opening,
  );
  const of = (figure: (run: Opening) => number) => median(runs.map(figure));
  return [
    row('notebook.100000.opened.fresh', 1000 * of((run) => run.seconds), 'ms', 1000 * read),
    row('notebook.100000.memory.rss', of((run) => run.after.rss) / MB, 'MB', of((run) => run.before.rss) / MB),
    row('notebook.100000.memory.heap', of((run) => run.after.heapUsed) / MB, 'MB', of((run) => run.before.heapUsed) / MB),
    row('notebook.100000.memory.peak', of((run) => run.peak) / MB, 'MB', of((run) => run.before.rss) / MB),
  ];
}

/** One setting turned, over and over, each time down to the disk; then undone as often. */
async function smallRows(folder: string): Promise<Row[]> {
  const { archer, bow, arrowSet, setup } = exampleBundle;
  const bench = await open(path.join(folder, 'small.sqlite'));
  valueOf(bench.notebook.seed([archer, bow, arrowSet, setup, ...exampleBundle.groups]));
  let stands: Setup = setup;
  const turn = () => {
    const turns = stands.settings.buttonTurns === 3 ? 3.25 : 3;
    const after: Setup = { ...stands, settings: { ...stands.settings, buttonTurns: turns } };
    const written = valueOf(bench.notebook.apply({ label: 'Button', edits: [{ id: setup.id, before: stands, after }] }));
    stands = written.records[0]?.record as Setup;
  };
  const bytes = Buffer.alloc(4096, 'x'); // a page: the least that reaches the disk
  const times: Record<'applied' | 'undone' | 'bare', number[]> = { applied: [], undone: [], bare: [] };
  for (let round = 0; round < 300; round++) {
    const applied = await secondsOf(turn);
    const last = bench.notebook.state.undo?.entry ?? 0;
    const undone = await secondsOf(() => {
      stands = valueOf(bench.notebook.undo(last)).records[0]?.record as Setup;
    });
    const bare = await secondsOf(() => bareWrite(path.join(folder, 'small.txt'), bytes));
    if (round < 100) continue; // warms up
    times.applied.push(applied);
    times.undone.push(undone);
    times.bare.push(bare);
  }
  await bench.close();
  return [
    timed('notebook.change.applied', median(times.applied), median(times.bare)),
    timed('notebook.change.undone', median(times.undone), median(times.bare)),
  ];
}

/** The folder must lie on a real disk: in memory, "durable" would cost nothing and mean nothing. */
export async function notebookRows(folder: string): Promise<Row[]> {
  return [...(await smallRows(folder)), ...(await largeRows(folder))];
}
