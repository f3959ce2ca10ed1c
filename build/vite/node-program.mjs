import { readFileSync } from 'node:fs';
import { builtinModules } from 'node:module';
import { basename, join } from 'node:path';
import { projectRoot } from '../lib/project-root.mjs';

/**
 * A program for Node or Electron in one file, with every package inside but Node's own modules and Electron.
 * `beside` names files that the program reads at run time from its own folder, such as compiled code of a package.
 * @param {{ entry: string, outDir: string, fileName: string, format: 'cjs' | 'es', beside?: readonly string[] }} program
 * @returns {import('vite').InlineConfig}
 */
export const nodeProgramConfig = ({ entry, outDir, fileName, format, beside = [] }) => ({
  configFile: false,
  root: projectRoot,
  logLevel: 'warn',
  publicDir: false,
  plugins: [filesBeside(beside)],
  // The workbook library's entry for Node compiles code from text when it is imported; its browser bundle does the same work without.
  resolve: { alias: [{ find: /^exceljs$/, replacement: 'exceljs/dist/exceljs.bare.min.js' }] },
  ssr: { noExternal: true, external: ['electron', ...builtinModules] },
  build: {
    ssr: true,
    outDir,
    emptyOutDir: false,
    target: 'node20',
    minify: false,
    rolldownOptions: {
      input: join(projectRoot, entry),
      external: ['electron', /^node:/, ...builtinModules],
      output: { format, entryFileNames: fileName, codeSplitting: false },
    },
  },
});

/** @param {readonly string[]} files @returns {import('vite').Plugin} */
const filesBeside = (files) => ({
  name: 'files-beside',
  generateBundle() {
    for (const file of files)
      this.emitFile({ type: 'asset', fileName: basename(file), source: readFileSync(join(projectRoot, file)) });
  },
});
