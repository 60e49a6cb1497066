/**
 * The names of the calls, apart from their schemas: Electron's sandboxed preload script must know them without carrying zod. The contract
 * in core/host.ts does not compile unless it answers exactly these; first those that the bench itself answers.
 */
export const benchChannels = [
  'bench.info',
  'notebook.load',
  'notebook.apply',
  'notebook.shots',
  'notebook.undo',
  'notebook.redo',
  'preferences.get',
  'preferences.set',
] as const;
export type BenchChannel = (typeof benchChannels)[number];
export const isBenchChannel = (name: unknown): name is BenchChannel => (benchChannels as readonly unknown[]).includes(name);

/**
 * What is answered where the window is, and never by the bench that holds the notebook: Electron's main process asks where to save a
 * file and prints the page into it, and in a browser the page itself hands files over as downloads and opens the browser's own print dialog.
 */
const windowChannels = ['files.save', 'files.pdf'] as const;

export const channels = [...benchChannels, ...windowChannels] as const;
export type Channel = (typeof channels)[number];

/** The one channel on which the host speaks unasked. */
export const EVENT_CHANNEL = 'bench.event';

/**
 * The largest call a transport carries. A group of 100,000 shots is some 7 MB of text, so the usual 1 MiB would refuse what the notebook
 * itself allows.
 */
export const MOST_CALL_BYTES = 16 * 1024 * 1024;
export const TOO_LARGE =
  'This change is larger than 16 MiB, the most that one call carries. Split it, or use groups of fewer shots; nothing was written.';
