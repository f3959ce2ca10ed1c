import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';

const faces = [
  {
    family: 'Source Sans 3 Variable',
    file: '@fontsource-variable/source-sans-3/files/source-sans-3-latin-wght-normal.woff2',
  },
  {
    family: 'Source Serif 4 Variable',
    file: '@fontsource-variable/source-serif-4/files/source-serif-4-latin-wght-normal.woff2',
  },
];

/** The typefaces of the papers as style rules that carry the fonts themselves; those not installed are left to the reader's machine. */
export function paperFonts(): string {
  const { resolve } = createRequire(import.meta.url);
  return faces
    .map(({ family, file }) => {
      try {
        const data = readFileSync(resolve(file)).toString('base64');
        return `@font-face { font-family: "${family}"; font-weight: 200 900; src: url(data:font/woff2;base64,${data}) format("woff2"); }`;
      } catch {
        return '';
      }
    })
    .join('\n');
}
