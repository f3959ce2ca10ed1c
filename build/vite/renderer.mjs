import { svelte } from '@sveltejs/vite-plugin-svelte';
import { join } from 'node:path';
import { projectRoot } from '../lib/project-root.mjs';

/**
 * The window's page: relative addresses, because it is served both from the app's own scheme and from 127.0.0.1; no inlined scripts,
 * styles, fonts or pictures, because the page policy refuses them.
 * @param {string} outDir
 * @returns {import('vite').InlineConfig}
 */
export const rendererConfig = (outDir) => ({
  configFile: false,
  root: join(projectRoot, 'renderer'),
  base: './',
  logLevel: 'warn',
  plugins: [svelte({ configFile: false })],
  worker: { format: 'es' },
  build: {
    outDir,
    emptyOutDir: true,
    // Electron 45 carries a newer Chromium; a browser that opens the page instead may be a little older.
    target: 'es2023',
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    reportCompressedSize: false,
    // The workbook writer is large by itself and is only loaded by the worker that writes one.
    chunkSizeWarningLimit: 1500,
  },
});
