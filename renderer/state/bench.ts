import { createStore, type StoreApi } from 'zustand/vanilla';
import type { Screen } from '../../core/findings/finding.ts';
import type { FileToSave, PageToPrint } from '../../core/files.ts';
import type { BenchInfo, Book, Host, UndoState, Written } from '../../core/host.ts';
import type { Id, Stamp } from '../../core/model/common.ts';
import { defaultPreferences, type Preferences } from '../../core/model/preferences.ts';
import type { ShotGroup } from '../../core/model/group.ts';
import { ok, type Problem, type Result } from '../../core/model/problem.ts';
import type { BenchRecord, RecordEdit } from '../../core/model/records.ts';
import { withShots, type ShotsEdit } from '../../core/model/shotsEdit.ts';
import { now } from './clock.ts';
import { rememberedPlace, rememberPlace } from './place.ts';
import { bundleOf, recordsOf, setupsOf, type Records } from './selectors.ts';
import { turnTaking } from './turns.ts';

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
  /** Records in the notebook that this version cannot read. They are left as they are, and nobody is kept from the rest. */
  readonly unreadable: readonly Problem[];
  /** Writes on their way to the notebook, those that wait their turn too. */
  readonly pending: number;

  open(book: Book): Promise<void>;
  go(screen: Screen): void;
  choose(setupId: Id): void;
  /** One user's edit: the edits are worked out from the records as they stand when its turn comes, so that quick typing never goes stale. */
  change(label: string, edits: (records: Records) => readonly RecordEdit[]): Promise<boolean>;
  /** The same for the shots of one group, of which only those that are put in or taken out go to the notebook. */
  changeShots(label: string, groupId: Id, edit: (group: ShotGroup) => ShotsPatch | null): Promise<boolean>;
  undo(): Promise<void>;
  redo(): Promise<void>;
  prefer(preferences: Preferences): Promise<void>;
  /** Hands a file to whoever can write one, and says what became of it. */
  save(file: FileToSave): Promise<boolean>;
  /** Hands the page, as it is laid out for print, to whoever can print it. */
  print(page: PageToPrint): Promise<boolean>;
}

/** Shots of a group that are taken out, by their ids, and those that are put in: in place of the one of the same id, or at the end. */
export type ShotsPatch = Partial<Pick<ShotsEdit, 'out' | 'put'>>;

export type Bench = StoreApi<BenchState>;

/** News laid over the records; what is older than what is here already stays out. */
function withWritten(records: Records, written: Written): Records {
  const next = new Map(records);
  for (const { id, record } of written.records) {
    if (record === null) next.delete(id);
    else if (record.revision >= (next.get(id)?.revision ?? 0)) next.set(id, record);
  }
  return next;
}

/** A group with an edit of its shots laid over it, as an answer to a write. */
const shotsWritten = (group: ShotGroup, edit: ShotsEdit, revision: number, state: UndoState): Written => ({
  records: [{ id: group.id, record: { ...group, revision, shots: withShots(group.shots, edit) } }],
  state,
});

/** The place that is left when the records have moved on: the same set-up if it still stands, else the one shot with last, else any, else the first window. */
function placeIn(records: Records, setupId: Id | null, screen: Screen): Pick<BenchState, 'setupId' | 'screen'> {
  const standing = (id: Id | null) => id !== null && bundleOf(records, id) !== null;
  const shotLast = [...recordsOf(records, 'group')].sort((a, b) => b.context.shotAt.at.localeCompare(a.context.shotAt.at));
  const likely = [...shotLast.map((group) => group.setupId), ...setupsOf(records).map((setup) => setup.id)];
  const left = standing(setupId) ? setupId : (likely.find(standing) ?? null);
  return { setupId: left, screen: left === null ? 'first' : screen };
}

export function createBench(host: Host): Bench {
  const inTurn = turnTaking();

  const bench = createStore<BenchState>((set, get) => {
    const heard = (book: Book, news: Written, said?: string) => {
      if (book !== get().book) return;
      const records = withWritten(get().records, news);
      set({ records, undoState: news.state, ...placeIn(records, get().setupId, get().screen) });
      if (said !== undefined) set({ said: { kind: 'kept', sentence: said, at: now() } });
    };
    const refused = (problem: Problem) => set({ said: { kind: 'refused', sentence: problem.sentence, at: now() } });

    const read = async (book: Book): Promise<Result<Pick<BenchState, 'book' | 'records' | 'undoState' | 'unreadable'>>> => {
      const loaded = await host.call('notebook.load', { book });
      if (!loaded.ok) return loaded;
      const { records, state, problems } = loaded.value;
      const byId = new Map(records.map((record) => [record.id, record] as const));
      return { ok: true, value: { book, records: byId, undoState: state, unreadable: problems } };
    };
    const load = async (book: Book): Promise<void> => {
      const notebook = await read(book);
      if (notebook.ok) set({ ...notebook.value, ...placeIn(notebook.value.records, get().setupId, get().screen) });
    };

    /** Counted from the moment it is asked for, and kept to the book it was meant for. */
    const write = (ask: (book: Book) => Promise<Result<Written> | null>, said: () => string): Promise<boolean> => {
      const book = get().book;
      set({ pending: get().pending + 1 });
      return inTurn(async () => {
        if (get().book !== book) return false;
        const answer = await ask(book);
        if (answer === null) return true;
        if (answer.ok) heard(book, answer.value, said());
        else {
          // What another window did is shown at once, so that the sentence speaks of what stands on the page.
          if (answer.problem.code === 'stale' || answer.problem.code === 'undo-moved') await load(book);
          refused(answer.problem);
        }
        return answer.ok;
      }).finally(() => set({ pending: get().pending - 1 }));
    };

    const step = async (which: 'undo' | 'redo', word: string) => {
      // What the person saw is meant; but after a step or a change that still waits, whatever stands when that is done.
      let next = get().pending === 0 ? get().undoState[which] : undefined;
      if (next === null) return;
      const ask = async (book: Book): Promise<Result<Written> | null> => {
        next ??= get().undoState[which];
        return next === null ? null : host.call(`notebook.${which}`, { book, expected: next.entry });
      };
      await write(ask, () => `${word}: ${next?.label}`);
    };

    host.subscribe((event) => {
      if (event.event === 'notebook.changed') heard(event.book, event.written);
      else if (event.event === 'shots.changed') {
        const group = event.book === get().book ? get().records.get(event.edit.groupId) : undefined;
        // An edit of a group that this window knows in another state cannot be followed.
        if (group?.kind !== 'group' || group.revision !== event.edit.revision) void inTurn(() => load(get().book));
        else heard(event.book, shotsWritten(group, event.edit, event.revision, event.state));
      } else if (get().phase === 'open') void inTurn(() => load(get().book));
    });

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
      unreadable: [],
      pending: 0,

      open: (book) =>
        inTurn(async () => {
          const info = await host.call('bench.info', null);
          if (!info.ok) return set({ phase: 'closed', problem: info.problem });
          const closed = book === 'own' ? info.value.notebook.problem : null;
          const notebook = closed === null ? await read(book) : ({ ok: false, problem: closed } as const);
          if (!notebook.ok) return set({ phase: 'closed', info: info.value, problem: notebook.problem, book });
          const preferences = await host.call('preferences.get', null);
          const before = get().phase === 'opening' ? rememberedPlace() : null;
          // All at once: what stands on the page until then is the book before, never an empty one.
          set({
            info: info.value,
            ...notebook.value,
            ...placeIn(notebook.value.records, before?.setupId ?? null, before?.screen ?? 'bow'),
            ...(preferences.ok ? { preferences: preferences.value } : {}),
            phase: 'open',
            said: null,
            problem: null,
          });
        }),
      go: (screen) => set({ screen, said: get().said?.kind === 'refused' ? null : get().said }),
      choose(setupId) {
        if (bundleOf(get().records, setupId) !== null) {
          set({ setupId, screen: get().screen === 'first' ? 'bow' : get().screen });
        } else {
          const sentence =
            'This set-up rests on a record that this bench cannot read. It is left as it is; the findings say which.';
          set({ said: { kind: 'refused', sentence, at: now() } });
        }
      },
      change: (label, edits) =>
        write(
          async (book) => {
            const list = edits(get().records);
            return list.length === 0 ? null : host.call('notebook.apply', { book, change: { label, edits: [...list] } });
          },
          () => label,
        ),
      changeShots: (label, groupId, edit) =>
        write(
          async (book) => {
            const group = get().records.get(groupId);
            const patch = group?.kind === 'group' ? edit(group) : null;
            if (group?.kind !== 'group' || patch === null) return null;
            const whole = { groupId, revision: group.revision, out: patch.out ?? [], put: patch.put ?? [] };
            const answer = await host.call('notebook.shots', { book, label, edit: whole });
            return answer.ok ? ok(shotsWritten(group, whole, answer.value.revision, answer.value.state)) : answer;
          },
          () => label,
        ),
      undo: () => step('undo', 'Undone'),
      redo: () => step('redo', 'Done again'),
      async prefer(preferences) {
        const answer = await host.call('preferences.set', preferences);
        if (answer.ok) set({ preferences: answer.value });
        else refused(answer.problem);
      },
      async save(file) {
        const answer = await host.call('files.save', file);
        if (!answer.ok) refused(answer.problem);
        else if (answer.value.outcome !== 'cancelled') {
          // A browser does not tell what became of a download.
          const done = answer.value.outcome === 'saved' ? 'Saved' : 'Given to the browser to save';
          set({ said: { kind: 'kept', sentence: `${done} as ${answer.value.name}`, at: now() } });
        }
        return answer.ok && answer.value.outcome !== 'cancelled';
      },
      async print(page) {
        const answer = await host.call('files.pdf', page);
        if (!answer.ok) refused(answer.problem);
        else if (answer.value.outcome === 'saved')
          set({ said: { kind: 'kept', sentence: `Saved as ${answer.value.name}`, at: now() } });
        return answer.ok && answer.value.outcome !== 'cancelled';
      },
    };
  });

  bench.subscribe((state) => {
    if (state.phase === 'open') rememberPlace(state);
  });
  return bench;
}

/** The edit that lays a patch over a record that exists. */
export function edited<R extends BenchRecord>(record: R, patch: Partial<R>): RecordEdit {
  const { id, kind, revision } = record;
  return { id, before: { id, kind, revision }, after: { ...record, ...patch } };
}

/** The edit with which a record is born. */
export const born = (record: BenchRecord): RecordEdit => ({ id: record.id, before: null, after: record });
