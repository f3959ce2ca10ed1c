/**
 * What is built, from what, and how one sees that it is there. Everything lands in dist/<name>.
 * @typedef {{ name: string, result: string, inputs: readonly string[], configs: (outDir: string) => Promise<import('vite').InlineConfig[]> }} Bundle
 */

const tools = ['package-lock.json', 'build/vite', 'build/bundles.mjs'];

/** @param {Omit<Parameters<typeof import('./vite/node-program.mjs').nodeProgramConfig>[0], 'outDir'>[]} programs */
const nodePrograms = (programs) => async (/** @type {string} */ outDir) => {
  const { nodeProgramConfig } = await import('./vite/node-program.mjs');
  return programs.map((program) => nodeProgramConfig({ ...program, outDir }));
};

export const bundles = {
  /** @type {Bundle} */
  renderer: {
    name: 'renderer',
    result: 'index.html',
    inputs: [
      'renderer',
      'src',
      'electron/host.ts',
      'electron/preferences.ts',
      'electron/preferences-schema.ts',
      'examples',
      ...tools,
    ],
    configs: async (outDir) => [(await import('./vite/renderer.mjs')).rendererConfig(outDir)],
  },
  /** @type {Bundle} */
  electron: {
    name: 'electron',
    result: 'main.cjs',
    inputs: ['electron', 'src', ...tools],
    configs: nodePrograms([
      { entry: 'electron/preload.ts', fileName: 'preload.cjs', format: 'cjs' },
      { entry: 'electron/main.ts', fileName: 'main.cjs', format: 'cjs' },
    ]),
  },
  /** @type {Bundle} */
  cli: {
    name: 'cli',
    result: 'tonne.mjs',
    inputs: ['src', ...tools],
    configs: nodePrograms([
      {
        entry: 'src/cli/main.ts',
        fileName: 'tonne.mjs',
        format: 'es',
        beside: ['node_modules/highs/build/highs.wasm'],
      },
    ]),
  },
  /** @type {Bundle} */
  bench: {
    name: 'bench',
    result: 'main.mjs',
    inputs: ['test/bench', 'src', 'examples', ...tools],
    configs: nodePrograms([{ entry: 'test/bench/main.ts', fileName: 'main.mjs', format: 'es' }]),
  },
  /** @type {Bundle} */
  faults: {
    name: 'faults',
    result: 'main.mjs',
    inputs: ['test/faults', 'test/support/dice.ts', 'src', 'electron', 'renderer/session/draft-keeper.ts', ...tools],
    configs: nodePrograms([{ entry: 'test/faults/main.ts', fileName: 'main.mjs', format: 'es' }]),
  },
};
