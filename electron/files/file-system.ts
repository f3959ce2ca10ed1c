import { constants } from 'node:fs';
import { access, copyFile, open, readFile, realpath, rename, stat, unlink } from 'node:fs/promises';

interface OpenFile {
  writeFile(bytes: Uint8Array): Promise<void>;
  sync(): Promise<void>;
  close(): Promise<void>;
}

/** The part of the file system that opening and saving use, so that tests can make any step of it fail. */
export interface FileSystem {
  stat(path: string): Promise<{ readonly size: number; readonly mode: number; isFile(): boolean }>;
  realpath(path: string): Promise<string>;
  readFile(path: string): Promise<Uint8Array>;
  /** Fails where the file may not be written to. */
  checkWritable(path: string): Promise<void>;
  /** Fails where the file exists already. */
  createNew(path: string, mode: number): Promise<OpenFile>;
  openFolder(path: string): Promise<OpenFile>;
  copyFile(from: string, to: string): Promise<void>;
  rename(from: string, to: string): Promise<void>;
  unlink(path: string): Promise<void>;
}

export const diskFileSystem: FileSystem = {
  stat,
  realpath,
  readFile: (path) => readFile(path),
  checkWritable: (path) => access(path, constants.W_OK),
  createNew: (path, mode) => open(path, 'wx', mode),
  openFolder: (path) => open(path, 'r'),
  copyFile,
  rename,
  unlink,
};
