import type { FileSystem } from './file-system.ts';

/** What a save needs of the world besides the disk. */
export interface SaveMeans {
  readonly files: FileSystem;
  readonly wait: (milliseconds: number) => Promise<void>;
  /** Letters that no other save will use. */
  readonly randomLetters: () => string;
}
