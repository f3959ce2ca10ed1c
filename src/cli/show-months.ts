import {
  type MonthResults,
  type OpenCase,
  type PriceMonths,
  editStructure,
  formatNumber,
  kindOfLines,
  monthResults,
  problemSentence,
  readMonths,
  unitLabel,
  usualMonthInputs,
} from '../index.ts';
import { textTable } from '../report/text-table.ts';
import { badRowSentence, monthsSentence } from '../wording/month-sentences.ts';
import { type Console, Refusal, WrongUse, readText } from './console.ts';
import { type SetOptions, openWithSets, wholly } from './open-with-sets.ts';
import { decimalMarkOf, readPlainNumber } from './read-plain-number.ts';
import { inputOf, resultOf } from './result-of.ts';

export interface MonthsOptions extends SetOptions {
  readonly result: string;
  readonly points?: string;
  readonly pulp?: string;
  readonly recovered?: string;
  readonly json?: boolean;
}

/** Prints a result at the prices of a mill's own months, from the case or from a file of rows, and in how many months each route won. */
export function showMonths(console: Console, file: string, options: MonthsOptions): void {
  const open = withMonths(wholly(openWithSets(file, options)), options, console.locale);
  const { months } = open.content;
  if (months === undefined)
    throw new WrongUse(
      'This case holds no months. Give a file of rows with --points: month, pulp price, recovered price.',
    );
  const found = monthResults(open, resultOf(open, options.result), months);
  const sentence = monthsSentence(found, names(open));
  if (options.json === true) console.say(`${JSON.stringify({ ...found, sentence }, null, 2)}\n`);
  else console.say(`${table(open, found, console.locale)}\n\n${sentence}\n`);
}

function withMonths(open: OpenCase, options: MonthsOptions, locale: string): OpenCase {
  const asked = options.points === undefined ? open.content.months?.points : pointsFrom(options.points, locale);
  const usual = open.content.months ?? usualMonthInputs(open);
  const pulp = options.pulp === undefined ? usual?.pulp : inputOf(open, options.pulp);
  const recovered = options.recovered === undefined ? usual?.recovered : inputOf(open, options.recovered);
  if (asked === undefined) return open;
  if (pulp === undefined || recovered === undefined)
    throw new WrongUse('Say with --pulp ID and --recovered ID which two prices the months are of.');
  const edited = editStructure(open, { kind: 'set months', months: { pulp, recovered, points: asked } });
  if (!edited.ok) throw new Refusal(edited.problems.map(problemSentence));
  return edited.value;
}

/** Nothing is taken from a file with a row that is no month: all of those rows are told. */
function pointsFrom(path: string, locale: string): PriceMonths['points'] {
  const mark = decimalMarkOf(locale);
  const { points, bad } = readMonths(readText(path), mark, (cell) => readPlainNumber(cell, mark));
  if (bad.length > 0) throw new Refusal(bad.map(badRowSentence));
  if (points.length === 0) throw new Refusal(['The file of months has no rows.']);
  return points;
}

/** "virgin" and "recovered" where that tells the two routes apart, else their own names. */
function names({ content }: OpenCase): { readonly base: string; readonly other: string } {
  const [base, other] = [content.compare.base, content.compare.with].map((id) =>
    content.routes.find((route) => route.id === id),
  );
  const kinds = [base, other].map((route) => kindOfLines(route?.lines ?? [], content.materials));
  return kinds[0] === kinds[1]
    ? { base: base?.label ?? '', other: other?.label ?? '' }
    : { base: kinds[0] ?? '', other: kinds[1] ?? '' };
}

function table({ model }: OpenCase, { result, pulp, recovered, months }: MonthResults, locale: string): string {
  const head = (id: string): string => {
    const input = model.graph.inputs.find((each) => each.id === id);
    return `${input?.where ?? input?.label ?? id}, ${unitLabel(input?.entryUnit ?? '1')}`;
  };
  const price = (value: number): string => formatNumber(value, { locale, significant: 6 });
  const rows = months.map((month) => [
    month.month,
    price(month.pulp),
    price(month.recovered),
    Number.isNaN(month.value) ? 'cannot be' : formatNumber(month.value, { locale, decimals: 2, sign: true }),
  ]);
  const columns = [head(pulp), head(recovered), result].map((each) => ({ head: each, holds: 'figures' }) as const);
  return textTable([{ head: 'Month', holds: 'words' }, ...columns], rows);
}
