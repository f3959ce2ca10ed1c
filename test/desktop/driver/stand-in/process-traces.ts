const watched = ['uncaughtException', 'unhandledRejection'] as const;

/** Notes what main leaves in this process, the words of its command line included, and returns a function that removes it again. */
export function borrowProcess(words: readonly string[]): () => void {
  const argv = process.argv;
  const before = watched.map((name) => new Set<unknown>(process.listeners(name as 'uncaughtException')));
  process.argv = ['tonne-for-tonne', ...words];
  return () => {
    process.argv = argv;
    watched.forEach((name, place) => {
      for (const listener of process.listeners(name as 'uncaughtException')) {
        if (before[place]?.has(listener) !== true) process.off(name, listener);
      }
    });
  };
}
