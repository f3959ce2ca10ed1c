import Module, { createRequire } from 'node:module';

interface Loader {
  _load: (name: string, ...rest: unknown[]) => unknown;
}

/** Runs the built main process in this Node, with a stand-in where it imports electron. */
export function loadMain(mainFile: string, electron: object): void {
  const require = createRequire(mainFile);
  const loader = Module as unknown as Loader;
  const load = loader._load;
  loader._load = (name, ...rest) => (name === 'electron' ? electron : load(name, ...rest));
  try {
    // A second run in the same test file starts afresh.
    Reflect.deleteProperty(require.cache, require.resolve(mainFile));
    require(mainFile);
  } finally {
    loader._load = load;
  }
}
