import { spawn } from 'node:child_process';
import fs from 'node:fs';
import { createInterface } from 'node:readline';
import { isDeepStrictEqual } from 'node:util';
import sqlite from 'node-sqlite3-wasm';
import { openNotebook } from '../../electron/notebook/open.ts';
import { counted, settled } from './killed.ts';

export interface KillPlan {
  /** Of the shots in each of the two groups of a Change: what makes a transaction larger than the page cache. */
  readonly shots: number;
  /** SQLite's page cache in pages of 4 KiB; 0 leaves it at its own 2 MB. */
  readonly pagesCached: number;
  /** Killed when so much of one Change's own time has passed since a Change was written; or of the time an opening takes, since it began. */
  readonly while: 'writing' | 'opening';
  readonly share: number;
}

export interface KillReport {
  readonly said: number;
  readonly found: number;
  /** Null when all is well. */
  readonly fault: string | null;
}

/** Lets the child write, kills it with SIGKILL, and looks at what it left. The moment goes by the child's own pace, not by a clock. */
export async function killOnce(writer: string, file: string, plan: KillPlan): Promise<KillReport> {
  const child = spawn(process.execPath, [writer, file, String(plan.shots), String(plan.pagesCached)], {
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  const times = new Map<string, number>();
  const lines: string[] = [];
  const killAfter = (span: number) => void setTimeout(() => child.kill('SIGKILL'), plan.share * span);
  createInterface({ input: child.stdout }).on('line', (line) => {
    lines.push(line);
    times.set(line, performance.now());
    const wrote = lines.filter((said) => said.startsWith('wrote')).map((said) => times.get(said) ?? 0);
    if (plan.while === 'writing' && wrote.length === 2) killAfter((wrote[1] ?? 0) - (wrote[0] ?? 0));
    if (plan.while === 'opening' && line === 'begin') killAfter(openingTime);
  });
  await new Promise((gone) => child.once('close', gone));
  const said = Math.max(0, ...lines.filter((line) => line.startsWith('wrote ')).map((line) => Number(line.slice(6))));
  const [began, open] = [times.get('begin'), times.get('open')];
  if (began !== undefined && open !== undefined) openingTime = open - began;
  const refused = lines.find((line) => line.startsWith('refused'));
  if (refused !== undefined) return { said, found: 0, fault: refused };
  return { said, ...(await lookAt(file, said, plan)) };
}
/** As last measured; a first guess until a child has opened a notebook. */
let openingTime = 100;

async function lookAt(file: string, said: number, plan: KillPlan): Promise<{ found: number; fault: string | null }> {
  const opened = await openNotebook(file, { now: () => ({ at: '2026-06-01T11:00:00Z', offsetMinutes: 0 }) });
  if (!opened.ok) return { found: 0, fault: opened.problem.sentence };
  const { records, state, problems } = opened.value.notebook.load();
  await opened.value.close();
  const [one, two] = settled(records);
  const found = Number(one?.note ?? 0);
  const fault = () => {
    if (problems.length > 0) return `unreadable: ${problems[0]?.sentence}`;
    if (found < said) return `lost: ${said} was said to be written, ${found} is there`;
    if (found > said + 1) return `too much: ${said} was said to be written, ${found} is there`;
    if ((state.undo?.label ?? '0') !== String(found)) return `the journal ends at ${state.undo?.label}, the records at ${found}`;
    for (const [which, record] of [
      [1, one],
      [2, two],
    ] as const) {
      const whole = { ...counted(which, found, plan.shots), revision: record?.revision };
      if (record !== null && !isDeepStrictEqual(record, whole)) return `torn: record ${which} is not the one of ${found}`;
    }
    return integrityFault(file);
  };
  return { found, fault: fault() };
}

/** SQLite's own judgement of the closed file. */
function integrityFault(file: string): string | null {
  if (fs.existsSync(`${file}-wal`)) return 'the log was not folded in at closing';
  const db = new sqlite.Database(file);
  db.get('PRAGMA locking_mode = EXCLUSIVE');
  const said = (db.get('PRAGMA integrity_check') as { integrity_check?: unknown } | null)?.integrity_check;
  db.close();
  return said === 'ok' ? null : `integrity: ${String(said)}`;
}

/** A small generator with a seed (mulberry32), so that a failure can be run again. */
export function seeded(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}
