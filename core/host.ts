import { z } from './model/zod.ts';
import type { Channel } from './channels.ts';
import { FileSaved, FileToSave, PagePrinted, PageToPrint } from './files.ts';
import { Change, BenchRecord } from './model/records.ts';
import { ShotsEdit } from './model/shotsEdit.ts';
import { Preferences } from './model/preferences.ts';
import { Problem, type Result } from './model/problem.ts';

/** The user's own notebook, or the demo's, which lives in a file of its own and is thrown away with the session. */
export const Book = z.enum(['own', 'demo']);
export type Book = z.infer<typeof Book>;

/** A Change in the journal: its own words, and the entry that another window could meanwhile have put itself on top of. */
export const JournalStep = z.strictObject({ label: z.string(), entry: z.int().nonnegative() });
export type JournalStep = z.infer<typeof JournalStep>;

/** What undo and redo would do now; null when there is nothing. */
export const UndoState = z.strictObject({ undo: JournalStep.nullable(), redo: JournalStep.nullable() });
export type UndoState = z.infer<typeof UndoState>;

/** Answer to every write: the records as they now stand (null: gone), by id. */
export const Written = z.strictObject({
  records: z.array(z.strictObject({ id: z.uuid(), record: BenchRecord.nullable() })),
  state: UndoState,
});
export type Written = z.infer<typeof Written>;

export const BenchInfo = z.strictObject({
  shell: z.enum(['electron', 'loopback']),
  version: z.string(),
  notebook: z.strictObject({ file: z.string(), problem: Problem.nullable() }),
});
export type BenchInfo = z.infer<typeof BenchInfo>;

/** One contract for every transport: Electron's IPC, the loopback host, and the in-memory host of tests. */
export const contract = {
  'bench.info': { input: z.null(), output: BenchInfo },
  'notebook.load': {
    input: z.strictObject({ book: Book }),
    /** A record that this version cannot read never blocks the rest: it stays in the file untouched and is named among the problems. */
    output: z.strictObject({ records: z.array(BenchRecord), state: UndoState, problems: z.array(Problem) }),
  },
  'notebook.apply': { input: z.strictObject({ book: Book, change: Change }), output: Written },
  /** A Change of a group's shots that carries only the shots it is about, and whose answer carries none: the page knows them. */
  'notebook.shots': {
    input: z.strictObject({ book: Book, label: Change.shape.label, edit: ShotsEdit }),
    output: z.strictObject({ revision: z.int().nonnegative(), state: UndoState }),
  },
  /** `expected` is the entry that the window shows as next to undo or redo: what another window did since is not undone unseen. */
  'notebook.undo': { input: z.strictObject({ book: Book, expected: z.int().nonnegative() }), output: Written },
  'notebook.redo': { input: z.strictObject({ book: Book, expected: z.int().nonnegative() }), output: Written },
  'preferences.get': { input: z.null(), output: Preferences },
  'preferences.set': { input: Preferences, output: Preferences },
  'files.save': { input: FileToSave, output: FileSaved },
  /** The page as it stands for print, at the size that it asks for. */
  'files.pdf': { input: PageToPrint, output: PagePrinted },
} as const satisfies Record<Channel, { input: z.ZodType; output: z.ZodType }>;

export { type BenchChannel, benchChannels, type Channel, channels, isBenchChannel } from './channels.ts';
export type Input<C extends Channel> = z.infer<(typeof contract)[C]['input']>;
export type Output<C extends Channel> = z.infer<(typeof contract)[C]['output']>;

/** What the host tells unasked: another window of the same bench has written, or the line was down and news may have been missed. */
export const HostEvent = z.discriminatedUnion('event', [
  z.strictObject({ event: z.literal('notebook.changed'), book: Book, written: Written }),
  /** The same of shots alone: the edit as it was made, and the revision that the group has now. */
  z.strictObject({
    event: z.literal('shots.changed'),
    book: Book,
    edit: ShotsEdit,
    revision: z.int().nonnegative(),
    state: UndoState,
  }),
  z.strictObject({ event: z.literal('host.reconnected') }),
]);
export type HostEvent = z.infer<typeof HostEvent>;

export interface Host {
  call<C extends Channel>(channel: C, input: Input<C>): Promise<Result<Output<C>>>;
  /** Returns its own unsubscribe, so that a caller cannot lose the handle that ends it. */
  subscribe(listener: (event: HostEvent) => void): () => void;
}
