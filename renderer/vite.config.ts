import path from 'node:path';
import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';

/** Relative addresses, so that the same files are served by app:// in Electron and by the loopback host. */
export default defineConfig({
  root: import.meta.dirname,
  base: './',
  plugins: [react()],
  resolve: { alias: { '@stdlib/assert-has-generator-support': path.join(import.meta.dirname, 'canMakeGenerators.cjs') } },
  build: {
    outDir: '../dist/renderer',
    emptyOutDir: true,
    target: 'chrome140',
    sourcemap: true,
    // Both would put inline code or data into the page, which the content security policy refuses.
    modulePreload: { polyfill: false },
    assetsInlineLimit: 0,
    chunkSizeWarningLimit: 2000,
  },
  worker: { format: 'es' },
});
