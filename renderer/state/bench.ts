import { createStore, type StoreApi } from 'zustand/vanilla';
import type { Screen } from '../../core/findings/finding.ts';
import type { BenchInfo, Book, Host, UndoState, Written } from '../../core/host.ts';
import type { Id, Stamp } from '../../core/model/common.ts';
import { defaultPreferences, type Preferences } from '../../core/model/preferences.ts';
import type { Problem, Result } from '../../core/model/problem.ts';
import type { BenchRecord, RecordEdit } from '../../core/model/records.ts';
import { now } from './clock.ts';
import { firstSetupId, type Records } from './selectors.ts';

/** The bench's state: what the host holds, as last heard, and where the user stands. Derived figures are not here; selectors compute them. */
export interface BenchState {
  readonly phase: 'opening' | 'open' | 'closed';
  readonly info: BenchInfo | null;
  readonly book: Book;
  readonly records: Records;
  readonly undoState: UndoState;
  readonly preferences: Preferences;
  readonly screen: Screen;
  readonly setupId: Id | null;
  /** The last write or refusal, in one sentence, for the title block and for screen readers. */
  readonly said: { readonly kind: 'kept' | 'refused'; readonly sentence: string; readonly at: Stamp } | null;
  /** Why the bench is not open. */
  readonly problem: Problem | null;
  /** Writes on their way to the notebook. */
  readonly pending: number;

  open(book: Book): Promise<void>;
  go(screen: Screen): void;
  choose(setupId: Id): void;
  /** One user's edit: the edits are worked out from the records as they stand when its turn comes, so that quick typing never goes stale. */
  change(label: string, edits: (records: Records) => readonly RecordEdit[]): Promise<boolean>;
  undo(): Promise<void>;
  redo(): Promise<void>;
  prefer(preferences: Preferences): Promise<void>;
  heard(book: Book, written: Written): void;
}

export type Bench = StoreApi<BenchState>;

const PLACE = 'fistmele.place';

/** Where the user stood before a reload. Only a convenience, so a browser that forgets it does no harm. */
function remembered(): { screen: Screen; setupId: Id | null } | null {
  try {
    const text = sessionStorage.getItem(PLACE);
    return text === null ? null : (JSON.parse(text) as { screen: Screen; setupId: Id | null });
  } catch {
    return null;
  }
}

function withWritten(records: Records, written: Written): Records {
  const next = new Map(records);
  for (const { id, record } of written.records) {
    if (record === null) next.delete(id);
    else next.set(id, record);
  }
  return next;
}

export function createBench(host: Host): Bench {
  // One write at a time, in the order they were made: the second edit of a record must see the first one's revision.
  let queue: Promise<unknown> = Promise.resolve();
  const inTurn = <T>(work: () => Promise<T>): Promise<T> => {
    const run = queue.then(work, work);
    queue = run.catch(() => undefined);
    return run;
  };

  const bench = createStore<BenchState>((set, get) => {
    const written = (answer: Result<Written>, sentence: string): boolean => {
      if (!answer.ok) {
        set({ said: { kind: 'refused', sentence: answer.problem.sentence, at: now() } });
        return false;
      }
      const records = withWritten(get().records, answer.value);
      const setupId = get().setupId !== null && records.has(get().setupId as Id) ? get().setupId : firstSetupId(records);
      set({ records, setupId, undoState: answer.value.state, said: { kind: 'kept', sentence, at: now() } });
      return true;
    };
    const counted = async (work: () => Promise<boolean>): Promise<boolean> => {
      set({ pending: get().pending + 1 });
      try {
        return await work();
      } finally {
        set({ pending: get().pending - 1 });
      }
    };
    const step = (channel: 'notebook.undo' | 'notebook.redo', word: string, label: (state: UndoState) => string | null) =>
      inTurn(() =>
        counted(async () => {
          const what = label(get().undoState);
          if (what === null) return false;
          return written(await host.call(channel, { book: get().book }), `${word}: ${what}`);
        }),
      ).then(() => undefined);

    return {
      phase: 'opening',
      info: null,
      book: 'own',
      records: new Map(),
      undoState: { undo: null, redo: null },
      preferences: defaultPreferences,
      screen: 'bow',
      setupId: null,
      said: null,
      problem: null,
      pending: 0,

      async open(book) {
        const info = await host.call('bench.info', null);
        if (!info.ok) return set({ phase: 'closed', problem: info.problem });
        const notebookProblem = info.value.notebook.problem;
        if (book === 'own' && notebookProblem !== null) {
          return set({ phase: 'closed', info: info.value, problem: notebookProblem, book });
        }
        const loaded = await host.call('notebook.load', { book });
        if (!loaded.ok) return set({ phase: 'closed', info: info.value, problem: loaded.problem, book });
        const preferences = await host.call('preferences.get', null);
        const records = new Map(loaded.value.records.map((record) => [record.id, record] as const));
        const before = get().phase === 'opening' ? remembered() : null;
        const first = firstSetupId(records);
        const setupId =
          before?.setupId !== undefined && before?.setupId !== null && records.has(before.setupId) ? before.setupId : first;
        set({
          phase: 'open',
          info: info.value,
          book,
          records,
          undoState: loaded.value.state,
          preferences: preferences.ok ? preferences.value : get().preferences,
          setupId,
          screen: first === null ? 'first' : before !== null && before.screen !== 'first' ? before.screen : 'bow',
          said: null,
          problem: null,
        });
      },
      go: (screen) => set({ screen }),
      choose: (setupId) => set({ setupId, screen: get().screen === 'first' ? 'bow' : get().screen }),
      change: (label, edits) =>
        inTurn(() =>
          counted(async () => {
            const list = edits(get().records);
            if (list.length === 0) return true;
            const answer = await host.call('notebook.apply', { book: get().book, change: { label, edits: [...list] } });
            return written(answer, label);
          }),
        ),
      undo: () => step('notebook.undo', 'Undone', (state) => state.undo),
      redo: () => step('notebook.redo', 'Done again', (state) => state.redo),
      async prefer(preferences) {
        set({ preferences });
        const answer = await host.call('preferences.set', preferences);
        if (!answer.ok) set({ said: { kind: 'refused', sentence: answer.problem.sentence, at: now() } });
      },
      heard(book, news) {
        if (book !== get().book) return;
        set({ records: withWritten(get().records, news), undoState: news.state });
      },
    };
  });

  host.subscribe((event) => bench.getState().heard(event.book, event.written));
  bench.subscribe((state) => {
    if (state.phase !== 'open') return;
    try {
      sessionStorage.setItem(PLACE, JSON.stringify({ screen: state.screen, setupId: state.setupId }));
    } catch {
      // A full or forbidden session store costs only the place after a reload.
    }
  });
  return bench;
}

/** The edit that lays a patch over a record that exists. */
export function edited<R extends BenchRecord>(record: R, patch: Partial<R>): RecordEdit {
  return { id: record.id, before: record, after: { ...record, ...patch } };
}

/** The edit with which a record is born. */
export const born = (record: BenchRecord): RecordEdit => ({ id: record.id, before: null, after: record });
