import { fileURLToPath } from 'node:url';

/** The checkout's folder, without a slash at its end; scripts may be started from anywhere. */
export const projectRoot = fileURLToPath(new URL('../..', import.meta.url)).replace(/[\\/]$/, '');
