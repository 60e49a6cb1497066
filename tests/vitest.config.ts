import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    root: import.meta.dirname,
    include: ['core/**/*.test.ts', 'published/**/*.test.ts', 'host/**/*.test.ts', 'check/**/*.test.ts', 'renderer/**/*.test.ts'],
    testTimeout: 60_000,
    hookTimeout: 60_000,
    pool: 'threads',
    // Core is pure, and whatever touches a disk has a folder of its own: one graph of modules for all files of a worker, not one each.
    isolate: false,
    setupFiles: ['properties.ts'],
    unstubEnvs: true,
    maxWorkers: 2,
  },
});
