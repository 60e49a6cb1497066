import { type Answer, createApi, type Shell } from './api.ts';
import { Books } from './books.ts';
import { now } from './clock.ts';
import { sweepDemoFolders } from './demoFolders.ts';

/** What a transport needs of the bench, wherever it runs. */
export interface Bench {
  call(channel: unknown, input: unknown): Promise<Answer>;
  /** Folds the log into the notebook and lets go of it. */
  close(): Promise<void>;
}

export interface BenchOptions extends Shell {
  readonly file: string;
}

export function createBench({ file, shell, version }: BenchOptions): Bench {
  sweepDemoFolders();
  const books = new Books(file, now);
  return { call: createApi(books, { shell, version }), close: () => books.close() };
}
