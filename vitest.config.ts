import { svelte } from '@sveltejs/vite-plugin-svelte';
import { defineConfig } from 'vitest/config';

// Classes with runes are tested in the form the browser gets, so that $derived and $effect behave as they do in the window;
// components stay in the form that renders to text, since Node has no page to mount them in.
const runes = svelte({
  configFile: false,
  dynamicCompileOptions: ({ filename }) => (filename.endsWith('.svelte') ? undefined : { generate: 'client' }),
});

export default defineConfig({
  plugins: [runes],
  ssr: { resolve: { conditions: ['browser', 'module', 'import', 'default'] } },
  test: {
    maxWorkers: 2,
    projects: [
      {
        extends: true,
        test: {
          name: 'unit',
          include: ['test/**/*.test.ts'],
          exclude: ['test/desktop/**', 'test/office/**'],
          // Random cases by the hundred take a second or two alone, and more when the machine is busy.
          testTimeout: 30_000,
          setupFiles: ['test/support/fixed-seed.ts'],
        },
      },
      {
        extends: true,
        test: {
          name: 'desktop',
          include: ['test/desktop/**/*.test.ts'],
          testTimeout: 60_000,
          hookTimeout: 60_000,
          // Each file starts a browser of its own; on a small machine two at once would time out.
          fileParallelism: false,
        },
      },
      {
        extends: true,
        test: {
          name: 'office',
          include: ['test/office/**/*.test.ts'],
          testTimeout: 120_000,
          hookTimeout: 120_000,
          fileParallelism: false,
        },
      },
    ],
  },
});
