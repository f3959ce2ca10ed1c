import { compare, datedInputs, machineEffectOf, sensitivity, spreadOf } from '../index.ts';
import { statementCsv } from '../report/statement-csv.ts';
import { statementPage } from '../report/statement-page.ts';
import { conditionPhrase } from '../wording/condition-phrase.ts';
import { tieredPrices } from '../study/tiered-prices.ts';
import type { Console } from './console.ts';
import { workbookBytes } from './workbook-bytes.ts';
import { writeWhole } from './write-whole.ts';
import { type SetOptions, openWithSets, wholly } from './open-with-sets.ts';
import { typedDay } from './today.ts';

export interface CompareOptions extends SetOptions {
  readonly json?: boolean;
  readonly csv?: string;
  readonly workbook?: string;
  readonly today?: string;
}

/** Prints the comparison of a case, and writes it as CSV or as a workbook where asked. */
export async function compareCase(console: Console, file: string, options: CompareOptions): Promise<void> {
  const open = wholly(openWithSets(file, options));
  const comparison = compare(open);
  const today = typedDay('--today', options.today ?? console.today);
  const spread = spreadOf(open, today);
  if (options.csv !== undefined) writeWhole(options.csv, statementCsv(comparison, spread, console.locale));
  if (options.workbook !== undefined) writeWhole(options.workbook, await workbookBytes(open, today));
  const machine = machineEffectOf(open);
  const warnings = spread.warnings.map(({ sentence, about }) => ({ sentence, about }));
  console.say(
    options.json === true
      ? `${JSON.stringify({ condition: conditionPhrase(spread), ...comparison, sameProduct: spread.sameProduct, today, dates: datedInputs(open, today), machineEffect: machine, warnings }, null, 2)}\n`
      : statementPage(
          comparison,
          spread,
          console.locale,
          sensitivity(open, spread.difference.perTonneId).rests,
          tieredPrices(open),
          machine,
        ),
  );
}
