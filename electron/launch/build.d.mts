/** Bundles one program for Node or Electron into one file. */
export function buildProgram(entry: string, outFile: string, format?: 'es' | 'cjs'): Promise<unknown>;
export function buildShell(outDir?: string): Promise<void>;
export function buildPage(): Promise<void>;
export function buildAll(options?: { onlyWhenStale?: boolean }): Promise<void>;
