/** Whether the script runs as the system's administrator on a Unix: some programs refuse to, and only then packages can be installed. */
export const isRoot = process.getuid?.() === 0;
