import { join } from 'node:path';

/**
 * The data folder of the portable program, beside the program itself, so that settings and drafts travel on the stick with it. Null
 * for an installed program. The variable is set by the portable program's starter (electron-builder, documentation of its target nsis).
 */
export function portableDataFolder(environment: Readonly<Record<string, string | undefined>>): string | null {
  const folder = environment['PORTABLE_EXECUTABLE_DIR'];
  return folder === undefined || folder === '' ? null : join(folder, 'Tonne for Tonne data');
}
