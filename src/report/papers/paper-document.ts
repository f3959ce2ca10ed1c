import type { Spread } from '../spread.ts';
import { type Markup, element } from './markup.ts';
import type { PaperSettings } from './paper-settings.ts';
import { printStyle, sheetStyle } from './print-style.ts';

/** What stands at the foot of every sheet: of which state of the case, and whether its checks pass. */
function sheetFoot(
  { checks }: Spread,
  { fileName, mark, version }: PaperSettings,
): { readonly left: string; readonly middle: string } {
  const broken = checks.filter(({ kept }) => !kept).map(({ label }) => label);
  const left = [fileName, mark === '' ? '' : `case ${mark}`, `Tonne for Tonne ${version}`].filter(
    (part) => part !== '',
  );
  const middle =
    checks.length === 0
      ? 'Not all figures are given'
      : broken.length === 0
        ? 'All checks pass'
        : `Does not hold: ${broken.join(', ')}`;
  return { left: left.join(', '), middle };
}

/** A paper as a file that stands by itself. `fonts` are style rules for the typefaces; "" leaves them to the reader's machine. */
export function paperDocument(spread: Spread, body: Markup, settings: PaperSettings, fonts = ''): string {
  const style = `${fonts}\n${sheetStyle(settings.format, sheetFoot(spread, settings))}\n${printStyle}\nbody { margin: 0; }\n@media screen { body { max-width: 190mm; margin: 12mm auto; padding: 0 6mm; } }`;
  const head = element(
    'head',
    {},
    element('meta', { charset: 'utf-8' }),
    element('meta', { name: 'viewport', content: 'width=device-width, initial-scale=1' }),
    element('meta', {
      'http-equiv': 'Content-Security-Policy',
      content: "default-src 'none'; style-src 'unsafe-inline'; font-src data:",
    }),
    element('title', {}, spread.title),
  ).html.replace('</head>', `<style>${style}</style></head>`);
  const page = element('body', { class: 'paper' }, body).html;
  return `<!doctype html>\n<html lang="en">${head}${page}</html>\n`;
}
