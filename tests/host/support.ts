import { unmeasured } from '../../core/model/unmeasured.ts';
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { onTestFinished } from 'vitest';
import type { UndoState, Written } from '../../core/host.ts';
import type { Archer, Bow, Change, Result, ShotGroup, Snapshot, Stamp } from '../../core/model/index.ts';
import { exampleBundle, exampleFletched } from '../../core/model/example.ts';
import type { Notebook } from '../../electron/notebook/notebook.ts';
import { openNotebook, type OpenNotebook, type OpenOptions } from '../../electron/notebook/open.ts';

export const stamp: Stamp = { at: '2026-06-01T10:00:00Z', offsetMinutes: 60 };

/** A clock that moves on by one minute each time it is asked. */
export function tickingClock(): () => Stamp {
  let minutes = 0;
  return () => ({ at: new Date(Date.UTC(2026, 5, 1, 10, minutes++)).toISOString(), offsetMinutes: 60 });
}

export function tempFolder(): string {
  const folder = fs.mkdtempSync(path.join(os.tmpdir(), 'fistmele-host-'));
  onTestFinished(() => {
    fs.chmodSync(folder, 0o700); // a test may have taken the right to write away
    fs.rmSync(folder, { recursive: true, force: true });
  });
  return folder;
}

export const tempNotebook = (): string => path.join(tempFolder(), 'notebook.sqlite');

/** Opens a notebook for one test and closes it after it. */
export async function opened(file = tempNotebook(), options: Partial<OpenOptions> = {}): Promise<Notebook> {
  return (await openedToClose(file, options)).notebook;
}

export async function openedToClose(file: string, options: Partial<OpenOptions> = {}): Promise<OpenNotebook> {
  const result = await openNotebook(file, { now: tickingClock(), ...options });
  const open = valueOf(result);
  onTestFinished(() => open.close());
  return open;
}

export async function refusalOf(file: string, options: Partial<OpenOptions> = {}): Promise<{ code: string; sentence: string }> {
  const result = await openNotebook(file, { now: tickingClock(), ...options });
  if (result.ok) {
    await result.value.close();
    throw new Error('the notebook was expected to be refused');
  }
  return result.problem;
}

export function valueOf<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(`${result.problem.code}: ${result.problem.sentence}`);
  return result.value;
}

export function problemOf(result: Result<unknown>): { code: string; sentence: string; field?: string | undefined } {
  if (result.ok) throw new Error('a refusal was expected');
  return result.problem;
}

export const uuid = (n: number): string => `20000000-0000-4000-8000-${String(n).padStart(12, '0')}`;

export const anArcher = (n: number, name = `Archer ${n}`): Archer => ({ ...exampleBundle.archer, id: uuid(n), name });
export const aBow = (n: number, name = `Bow ${n}`): Bow => ({ ...exampleBundle.bow, id: uuid(n), name });

export function aGroup(n: number, shots: number): ShotGroup {
  return {
    ...exampleFletched,
    id: uuid(n),
    shots: Array.from({ length: shots }, (_, i) => ({
      ...unmeasured.shot,
      id: i,
      x: Math.sin(i) / 7,
      y: Math.cos(i) / 7,
      arrow: (i % 12) + 1,
    })),
  };
}

export function aSnapshot(n: number): Snapshot {
  const { archer, bow, arrowSet, setup } = exampleBundle;
  return {
    kind: 'snapshot',
    id: uuid(n),
    revision: 0,
    born: stamp,
    archivedAt: null,
    name: `Snapshot ${n}`,
    note: '',
    taken: stamp,
    setupId: setup.id,
    bowId: bow.id,
    state: { archer, bow, arrowSet, setup },
    groups: [exampleFletched],
    figures: [{ key: 'weight', name: 'Weight on the fingers', use: 'weight', value: 146.8 }],
    programVersion: '0.1.0',
  };
}

/** As a window does it that shows the journal as it stands. */
export const undone = (notebook: Notebook): Result<Written> => notebook.undo(notebook.state.undo?.entry ?? 0);
export const redone = (notebook: Notebook): Result<Written> => notebook.redo(notebook.state.redo?.entry ?? 0);

/** What undo and redo would do, by their words alone. */
export const wordsOf = ({ undo, redo }: UndoState) => ({ undo: undo?.label ?? null, redo: redo?.label ?? null });

/** The answer to a write, with undo and redo by their words. */
export function stateWords(written: Result<Written>): ReturnType<typeof wordsOf> {
  return wordsOf(valueOf(written).state);
}

/** A Change of one record: a birth when `before` is null. */
export const change = (
  before: Change['edits'][number]['before'],
  after: Change['edits'][number]['after'],
  label = 'A change',
): Change => ({
  label,
  edits: [{ id: (after ?? before)?.id ?? '', before, after }],
});
