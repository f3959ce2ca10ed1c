import type { PaperFormat } from './paper-settings.ts';

const sizes: Readonly<Record<PaperFormat, string>> = { A4: '210mm 297mm', Letter: '8.5in 11in' };

/** The sheet of paper: its size, and what stands at its foot. Text comes from the case, so it is written as a CSS string. */
export function sheetStyle(format: PaperFormat, foot: { readonly left: string; readonly middle: string }): string {
  return `@page { size: ${sizes[format]}; margin: 12mm 15mm 16mm;
  @bottom-left { content: ${cssText(foot.left)}; ${footFont} }
  @bottom-center { content: ${cssText(foot.middle)}; ${footFont} }
  @bottom-right { content: "Page " counter(page) " of " counter(pages); ${footFont} } }`;
}

const footFont =
  'font: 400 8.5pt "Source Sans 3", "Source Sans 3 Variable", sans-serif; color: #333; vertical-align: top; padding-top: 3mm;';

function cssText(text: string): string {
  return `"${text.replace(/[^\p{L}\p{N} .,:;+()–-]/gu, (mark) => `\\${(mark.codePointAt(0) ?? 32).toString(16)} `)}"`;
}

/** Light always, black and greys, recovered paper flecked: it can be photocopied. */
export const printStyle = `
:root, .paper { color-scheme: light; }
.paper { background: #fff; color: #111; font: 400 10pt/1.35 "Source Sans 3 Variable", "Source Sans 3", "Segoe UI", "Helvetica Neue", Arial, sans-serif; font-variant-numeric: tabular-nums lining-nums; -webkit-print-color-adjust: exact; print-color-adjust: exact; }
/* The page for a board is one sheet; the shorter of the two formats takes it a little smaller. */
.paper .board.Letter { zoom: 0.93; }
.paper * { box-sizing: border-box; }
.paper header { display: flex; justify-content: space-between; align-items: flex-end; gap: 16pt; border-bottom: 1.6pt solid #111; padding-bottom: 5pt; }
.paper h1 { font-size: 13.5pt; font-weight: 650; margin: 0; line-height: 1.2; overflow-wrap: break-word; }
.paper header p { margin: 0; text-align: right; font-size: 8.5pt; white-space: nowrap; }
.paper .decide { font: 600 17pt/1.22 "Source Serif 4 Variable", "Source Serif 4", Georgia, "Times New Roman", serif; margin: 9pt 0 6pt; overflow-wrap: break-word; }
.paper p { margin: 0 0 7pt; }
.paper h2 { font-size: 11pt; font-weight: 650; margin: 11pt 0 2pt; display: flex; justify-content: space-between; align-items: baseline; gap: 12pt; break-after: avoid; }
.paper h2 > span { white-space: nowrap; }
.paper h2 small { font-size: 8.3pt; font-weight: 400; color: #333; text-align: right; }
.paper section.part { break-before: page; }
.paper section.part > h2:first-child { font-size: 14pt; margin-top: 0; border-bottom: 1.2pt solid #111; padding-bottom: 4pt; }
.paper .four { display: grid; grid-template-columns: repeat(4, 1fr); border: solid #111; border-width: .8pt 0; margin-top: 9pt; }
.paper .four div { padding: 6pt 8pt 6pt 9pt; border-left: .5pt solid #999; }
.paper .four div:first-child { border-left: 0; padding-left: 0; }
.paper .four b { font: 600 19pt/1.05 "Source Serif 4 Variable", "Source Serif 4", Georgia, serif; display: block; white-space: nowrap; }
.paper .four b small { font: 400 9pt "Source Sans 3 Variable", "Source Sans 3", sans-serif; }
.paper .four span { font-size: 8.3pt; line-height: 1.2; display: block; margin-top: 2pt; }
.paper .two { display: grid; grid-template-columns: 1.12fr 1fr; gap: 18pt; }
.paper table { border-collapse: collapse; width: 100%; font-size: 8.6pt; line-height: 1.25; }
.paper caption { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); }
.paper thead { display: table-header-group; }
.paper tr { break-inside: avoid; }
.paper th { font-weight: 400; text-align: left; padding: 2pt 6pt 2pt 0; vertical-align: baseline; overflow-wrap: break-word; }
.paper thead th { color: #333; border-bottom: .9pt solid #111; vertical-align: bottom; }
.paper td { padding: 2pt 6pt 2pt 0; vertical-align: baseline; overflow-wrap: break-word; }
.paper tbody th, .paper tbody td { border-bottom: .4pt solid #aaa; }
.paper .figures { text-align: right; }
.paper td.figures { white-space: nowrap; }
.paper td.figures.long { white-space: normal; }
.paper td.figures { font-family: "Source Serif 4 Variable", "Source Serif 4", Georgia, serif; }
.paper tr > :last-child { padding-right: 0; }
.paper tr.group th, .paper tr.group td { font-weight: 650; background: #eee; }
.paper tr.total th, .paper tr.total td { font-weight: 700; border-top: .9pt solid #111; border-bottom: 2.4pt double #111; }
.paper .care { font-size: 8.5pt; line-height: 1.3; color: #222; margin: 4pt 0 0; }
.paper ul { margin: 0 0 7pt; padding-left: 12pt; }
.paper li { margin-bottom: 2pt; }
.paper svg { display: block; width: 100%; height: auto; overflow: visible; break-inside: avoid; }
.paper svg text { font-family: "Source Sans 3 Variable", "Source Sans 3", sans-serif; font-size: 9.5px; fill: #111; }
.paper svg text.strong { font-weight: 700; }
.paper .plain { fill: #3a3a3a; }
.paper .flecked { stroke: #111; stroke-width: .8; }
.paper .rule { stroke: #111; stroke-width: 1; }
.paper .thin { stroke: #777; stroke-width: .8; }
.paper .torn { fill: #fff; }
`;
