import { diskFileSystem, type FileSystem } from '../../electron/files/file-system.ts';

/** An error as Node reports it. */
export function systemError(code: string): Error {
  return Object.assign(new Error(`${code}: the machine's own words`), { code });
}

/** The real disk, except for the steps that are given. */
export function diskExcept(changed: Partial<FileSystem>): FileSystem {
  return { ...diskFileSystem, ...changed };
}

/** The real disk, where one step on a newly made file fails. */
export function diskWhereNewFiles(fail: 'writeFile' | 'sync' | 'close', code: string): FileSystem {
  return diskExcept({
    createNew: async (path, mode) => {
      const file = await diskFileSystem.createNew(path, mode);
      return {
        writeFile: (bytes) => file.writeFile(bytes),
        sync: () => file.sync(),
        close: () => file.close(),
        [fail]: async () => {
          if (fail === 'writeFile') await file.writeFile(new Uint8Array([123]));
          if (fail === 'close') await file.close();
          throw systemError(code);
        },
      };
    },
  });
}
