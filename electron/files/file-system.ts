import { constants } from 'node:fs';
import {
  access,
  copyFile,
  link,
  mkdir,
  open,
  readdir,
  readFile,
  realpath,
  rename,
  stat,
  unlink,
} from 'node:fs/promises';

interface OpenFile {
  writeFile(bytes: Uint8Array): Promise<void>;
  sync(): Promise<void>;
  close(): Promise<void>;
}

/** `mtimeMs`: milliseconds since 1970 at which the content last changed, as the drive tells it. */
interface FileFacts {
  readonly size: number;
  readonly mode: number;
  readonly mtimeMs: number;
  isFile(): boolean;
}

/** The part of the file system that opening and saving use, so that tests can make any step of it fail. */
export interface FileSystem {
  stat(path: string): Promise<FileFacts>;
  realpath(path: string): Promise<string>;
  readFile(path: string): Promise<Uint8Array>;
  /** Fails where the file may not be written to. */
  checkWritable(path: string): Promise<void>;
  /** Fails where the file exists already. */
  createNew(path: string, mode: number): Promise<OpenFile>;
  openFolder(path: string): Promise<OpenFile>;
  copyFile(from: string, to: string): Promise<void>;
  /** A second name for the same content. Some drives have none. */
  link(from: string, to: string): Promise<void>;
  rename(from: string, to: string): Promise<void>;
  unlink(path: string): Promise<void>;
  /** The names in a folder. */
  readFolder(path: string): Promise<readonly string[]>;
  /** Makes a folder and those above it; one that is there already is left as it is. */
  makeFolder(path: string): Promise<unknown>;
}

export const diskFileSystem: FileSystem = {
  stat,
  realpath,
  readFile: (path) => readFile(path),
  checkWritable: (path) => access(path, constants.W_OK),
  createNew: (path, mode) => open(path, 'wx', mode),
  openFolder: (path) => open(path, 'r'),
  copyFile,
  link,
  rename,
  unlink,
  readFolder: (path) => readdir(path),
  makeFolder: (path) => mkdir(path, { recursive: true }),
};
