import * as v from 'valibot';

const mostRecent = 10;

export const recentSchema = v.pipe(v.array(v.pipe(v.string(), v.maxLength(4096))), v.maxLength(mostRecent));

/** The list with one more file in front; a file that stands in it already moves there. */
export function withRecent(recent: readonly string[], path: string): readonly string[] {
  return [path, ...recent.filter((known) => known !== path)].slice(0, mostRecent);
}

/** A file of the list. One that is not there now (deleted, moved, a drive that is off) stays in the list, greyed. */
export interface RecentFile {
  readonly path: string;
  readonly isThere: boolean;
}

// A share that is off can take half a minute to say so; the menu does not wait for it.
const patience = 1000;

/** Looks which of the files are there. */
export async function lookFor(
  paths: readonly string[],
  stat: (path: string) => Promise<{ isFile(): boolean }>,
  wait: (milliseconds: number) => Promise<void>,
): Promise<readonly RecentFile[]> {
  const isThere = (path: string): Promise<boolean> =>
    stat(path).then(
      (facts) => facts.isFile(),
      () => false,
    );
  return Promise.all(
    paths.map(async (path) => ({
      path,
      isThere: await Promise.race([isThere(path), wait(patience).then(() => false)]),
    })),
  );
}
