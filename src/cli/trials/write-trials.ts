import { setImmediate } from 'node:timers/promises';
import { formatNumber, trialColumns, trialPlan, trialRows, unitLabel } from '../../index.ts';
import { type Console, Refusal, WrongUse } from '../console.ts';
import { type SetOptions, openWithSets, wholly } from '../open-with-sets.ts';
import { resultOf } from '../result-of.ts';
import { wholeOption } from '../whole-option.ts';
import { beginWhole } from '../write-whole.ts';
import { csvTable } from './csv-table.ts';
import type { TrialTable } from './trial-table.ts';
import { xlsxTable } from './xlsx-table.ts';

export interface TrialsOptions extends SetOptions {
  readonly out: string;
  readonly result: string;
  readonly trials?: string;
  readonly seed?: string;
  readonly years?: string;
}

/** Draws trials and writes every one of them down as it is drawn. Stopped half-way, nothing is left behind. */
export async function writeTrials(console: Console, file: string, options: TrialsOptions): Promise<void> {
  const table = tableFor(options.out, console.locale);
  const changes = {
    ...wholeOption('trials', options.trials, 1_000, 1_000_000),
    ...wholeOption('seed', options.seed, 0, 4_294_967_295),
    ...wholeOption('years', options.years, 1, 30),
  };
  const open = wholly(openWithSets(file, options));
  const plan = trialPlan(open, resultOf(open, options.result), changes);
  const columns = trialColumns(open, plan);
  const heads = columns.map(({ id, label, unit, isMean }) =>
    [`${label} (${id})`, unitLabel(unit), isMean ? `mean of ${String(plan.years)} years` : '']
      .filter((part) => part !== '')
      .join(', '),
  );
  const count = (value: number): string => formatNumber(value, { locale: console.locale, decimals: 0 });
  const { trials } = plan.uncertainty;
  const whole = beginWhole(options.out);
  const stopping = new AbortController();
  const stopListening = console.onStop?.(() => stopping.abort());
  try {
    whole.write(table.begin(['Trial', ...heads]));
    let done = 0;
    for (const rows of trialRows(plan)) {
      whole.write(table.rows(rows.map((row, at) => [done + at + 1, ...row])));
      done += rows.length;
      console.progress?.(`${count(done)} of ${count(trials)} trials`);
      // Between two blocks the wish to stop is heard.
      await setImmediate();
      if (stopping.signal.aborted)
        throw new Refusal([`Stopped after ${count(done)} trials; "${options.out}" is as it was.`]);
    }
    whole.write(table.end());
    whole.finish();
    console.progress?.('');
    console.say(`Written: ${options.out}, ${count(trials)} trials\n`);
  } finally {
    stopListening?.();
    whole.giveUp();
  }
}

function tableFor(out: string, locale: string): TrialTable {
  if (/\.csv$/iu.test(out)) return csvTable(locale);
  if (/\.xlsx$/iu.test(out)) return xlsxTable();
  throw new WrongUse(`--out takes a file that ends in .csv or .xlsx; "${out}" was given.`);
}
