import { createHash } from 'node:crypto';
import { basename } from 'node:path';
import { version } from '../../package.json';
import { caseText } from '../index.ts';
import { boardPage } from '../report/papers/board-page.ts';
import { fullReport } from '../report/papers/full-report.ts';
import { paperDocument } from '../report/papers/paper-document.ts';
import { paperFacts } from '../report/papers/paper-facts.ts';
import type { PaperFormat, PaperSettings } from '../report/papers/paper-settings.ts';
import { type Console, WrongUse } from './console.ts';
import { writeWhole } from './write-whole.ts';
import { type SetOptions, openWithSets, wholly } from './open-with-sets.ts';
import { paperFonts } from './paper-fonts.ts';
import { printPdf } from './print-pdf.ts';
import { typedDay } from './today.ts';

export interface ReportOptions extends SetOptions {
  readonly out: string;
  readonly board?: boolean;
  readonly letter?: boolean;
  readonly today?: string;
}

/** Writes the report of a case, or its page for the board alone, as HTML that stands by itself or as PDF. */
export function writeReport(console: Console, file: string, options: ReportOptions): void {
  const kind = /\.(html|pdf)$/iu.exec(options.out)?.[1]?.toLowerCase();
  if (kind === undefined) throw new WrongUse(`--out takes a file ending in .html or .pdf, not "${options.out}".`);
  const date = typedDay('--today', options.today ?? console.today);
  const facts = paperFacts(wholly(openWithSets(file, options)), date);
  const settings = settingsOf(console, file, caseText(facts.open), date, options);
  const body = options.board === true ? boardPage(facts, settings) : fullReport(facts, settings);
  const page = paperDocument(facts.spread, body, settings, paperFonts());
  if (kind === 'html') writeWhole(options.out, page);
  else writeWhole(options.out, printPdf(page));
  console.say(`${options.out} is written.\n`);
}

function settingsOf(console: Console, file: string, text: string, date: string, options: ReportOptions): PaperSettings {
  const format: PaperFormat = options.letter === true ? 'Letter' : 'A4';
  return {
    locale: console.locale,
    date,
    fileName: basename(file),
    mark: createHash('sha256').update(text).digest('hex').slice(0, 8),
    version,
    format,
  };
}
