import type { z } from 'zod';
import {
  type Book,
  type BenchChannel,
  contract,
  type HostEvent,
  type Input,
  isBenchChannel,
  type Output,
  type Written,
} from '../core/host.ts';
import { ok, type Problem, refuse, type Result } from '../core/model/index.ts';
import type { Books } from './books.ts';
import type { Notebook } from './notebook/notebook.ts';

/** The reply to the window that called, and what its other windows should hear of. */
export interface Answer {
  readonly reply: Result<unknown>;
  readonly event: HostEvent | null;
}
export type Api = (channel: unknown, input: unknown) => Promise<Answer>;

export interface Shell {
  readonly shell: 'electron' | 'loopback';
  readonly version: string;
}

/** The contract's host end. Whatever comes in, a Result comes out; inputs are parsed here, once. */
export function createApi(books: Books, shell: Shell): Api {
  const within = async <T>(book: Book, work: (notebook: Notebook) => Result<T>): Promise<Result<T>> => {
    const opened = await books.open(book);
    return opened.ok ? work(opened.value) : opened;
  };
  const calls: { [C in BenchChannel]: (input: Input<C>) => Promise<Result<Output<C>>> } = {
    'bench.info': async () => ok({ ...shell, notebook: { file: books.file, problem: await books.problem() } }),
    'notebook.load': ({ book }) => within(book, (notebook) => ok(notebook.load())),
    'notebook.apply': ({ book, change }) => within(book, (notebook) => notebook.apply(change)),
    'notebook.shots': ({ book, label, edit }) => within(book, (notebook) => notebook.changeShots(label, edit)),
    'notebook.undo': ({ book, expected }) => within(book, (notebook) => notebook.undo(expected)),
    'notebook.redo': ({ book, expected }) => within(book, (notebook) => notebook.redo(expected)),
    'preferences.get': () => within('own', (notebook) => ok(notebook.preferences())),
    'preferences.set': (preferences) => within('own', (notebook) => notebook.setPreferences(preferences)),
  };
  return async (channel, input) => {
    if (!isBenchChannel(channel)) return silent(refuse('unknown-call', 'The bench has no such call. Reload the page.'));
    const parsed = contract[channel].input.safeParse(input);
    if (!parsed.success) return silent({ ok: false, problem: notUnderstood(parsed.error) });
    try {
      const reply = await (calls[channel] as (input: unknown) => Promise<Result<unknown>>)(parsed.data);
      return { reply, event: eventOf(channel, parsed.data, reply) };
    } catch (error) {
      console.error(channel, error);
      return silent(
        refuse('failed', 'The bench could not do this because of a fault of its own. What was saved stays; start it again.'),
      );
    }
  };
}

const silent = (reply: Result<unknown>): Answer => ({ reply, event: null });

const writes: ReadonlySet<BenchChannel> = new Set<BenchChannel>(['notebook.apply', 'notebook.undo', 'notebook.redo']);

function eventOf(channel: BenchChannel, input: unknown, reply: Result<unknown>): HostEvent | null {
  if (!reply.ok) return null;
  if (channel === 'notebook.shots') {
    const { book, edit } = input as Input<typeof channel>;
    return { event: 'shots.changed', book, edit, ...(reply.value as Output<typeof channel>) };
  }
  if (!writes.has(channel)) return null;
  return { event: 'notebook.changed', book: (input as { book: Book }).book, written: reply.value as Written };
}

/** The first thing that was wrong. The schemas' own sentences go through as they are; zod's are framed. */
export function notUnderstood(error: z.ZodError): Problem {
  const issue = error.issues[0];
  const field = issue?.path.join('.') ?? '';
  const said = issue?.message ?? 'nothing';
  const sentence = said.endsWith('.')
    ? `${said} Nothing was written.`
    : `This could not be understood (${field || 'input'}: ${said}). Nothing was written.`;
  return field === '' ? { code: 'bad-input', sentence } : { code: 'bad-input', sentence, field };
}
