import { type Sensitivity, type Swing, formatNumber, sensitivity, unitLabel } from '../index.ts';
import { textTable } from '../report/text-table.ts';
import { restsPhrase } from '../wording/rests-phrase.ts';
import { type Console, WrongUse } from './console.ts';
import { type SetOptions, openWithSets, wholly } from './open-with-sets.ts';
import { resultOf } from './result-of.ts';

export interface SensitivityOptions extends SetOptions {
  readonly result: string;
  readonly share?: string;
  readonly json?: boolean;
}

/** Prints what each input does to a result when it moves over its range alone, largest swing first. */
export function showSensitivity(console: Console, file: string, options: SensitivityOptions): void {
  const open = wholly(openWithSets(file, options));
  const share = options.share === undefined ? null : Number(options.share) / 100;
  if (share !== null && !(share > 0 && share <= 1))
    throw new WrongUse(`--share takes per cent above 0 and at most 100; "${options.share ?? ''}" was given.`);
  const found =
    share === null
      ? sensitivity(open, resultOf(open, options.result))
      : sensitivity(open, resultOf(open, options.result), 'share either way', share);
  console.say(options.json === true ? `${JSON.stringify(found, null, 2)}\n` : page(found, console.locale));
}

function page(found: Sensitivity, locale: string): string {
  const percent = (share: number): string => `${formatNumber(share * 100, { locale, decimals: 0 })} %`;
  const method =
    found.method === 'usual range'
      ? 'each input over its usual range'
      : `each input ${percent(found.share)} either way`;
  const rests = `It rests on: ${restsPhrase(found.rests, locale)} of all swings.`;
  const parts = [
    `${found.result} = ${formatNumber(found.base, { locale, significant: 8 })}; ${method}, one at a time`,
    table(found.judged, locale),
    rests,
  ];
  if (found.conventional.length > 0)
    parts.push(
      `No usual range is known for these; moved by ${percent(found.share)} either way, and kept out of any verdict:\n${table(found.conventional, locale)}`,
    );
  return `${parts.join('\n\n')}\n`;
}

function table(swings: readonly Swing[], locale: string): string {
  const number = (value: number): string => formatNumber(value, { locale, significant: 6 });
  const heads = ['input', 'figure', 'unit', 'low', 'high', 'at low', 'at high', 'swing', 'elasticity', 'note'];
  const words = ['input', 'unit', 'note'];
  const rows = swings.map((each) => [
    `${each.label}${each.where === '' ? '' : ` (${each.where})`}`,
    number(each.figure),
    unitLabel(each.unit),
    number(each.low),
    number(each.high),
    number(each.atLow),
    number(each.atHigh),
    number(each.swing),
    each.elasticity === null ? '' : formatNumber(each.elasticity, { locale, decimals: 3 }),
    [
      each.flips && each.isKnown ? 'could flip the answer' : '',
      each.sameWay ? 'both ends the same way' : '',
      isWithin(each) ? '' : 'today lies outside the range',
    ]
      .filter((note) => note !== '')
      .join('; '),
  ]);
  return textTable(
    heads.map((head) => ({ head, holds: words.includes(head) ? 'words' : 'figures' })),
    rows,
  );
}

function isWithin({ figure, low, high }: Swing): boolean {
  return figure >= low && figure <= high;
}
