import { Command, CommanderError } from 'commander';
import { type CheckOptions, check } from './check.ts';
import { type CompareOptions, compareCase } from './compare-case.ts';
import { type ExplainOptions, explainQuantity } from './explain-quantity.ts';
import { type InputsOptions, listInputs } from './list-inputs.ts';
import { type FootprintOptions, showFootprint } from './show-footprint.ts';
import { type BreakEvenOptions, showBreakEven } from './show-break-even.ts';
import { type SensitivityOptions, showSensitivity } from './show-sensitivity.ts';
import { type InvestOptions, showInvestment } from './show-investment.ts';
import { type LimitsOptions, showLimits } from './show-limits.ts';
import { type MonthsOptions, showMonths } from './show-months.ts';
import { type QualityOptions, showQuality } from './show-quality.ts';
import { type ReconcileOptions, showReconciliation } from './show-reconciliation.ts';
import { type ScenariosOptions, showScenarios } from './show-scenarios.ts';
import { type LotsOptions, showLots } from './show-lots.ts';
import { type TableOptions, showTable } from './show-table.ts';
import { type UncertaintyOptions, showUncertainty } from './show-uncertainty.ts';
import { type LineOptions, showLine } from './show-line.ts';
import { type ReportOptions, writeReport } from './write-report.ts';
import { type TrialsOptions, writeTrials } from './trials/write-trials.ts';
import { type WorkbookOptions, writeWorkbook } from './write-workbook.ts';
import { type Console, Refusal, WrongUse } from './console.ts';

/** Exit codes: 0 done, 1 the case has problems, 2 the command was used wrongly. */
const codes = { done: 0, problems: 1, wrongUse: 2 } as const;

const collect = (value: string, before: readonly string[]): readonly string[] => [...before, value];

function program(console: Console): Command {
  const root = new Command('tonne')
    .description('What a tonne of paper or board costs from virgin pulp and from recovered paper.')
    .exitOverride()
    .configureOutput({ writeOut: console.say, writeErr: console.complain });
  const withSets = (command: Command): Command =>
    command
      .option('--set <id=value>', 'give an input another figure, with or without a unit; may be repeated', collect, [])
      .option('--source <text>', 'where the figures of --set come from; carbon factors need it')
      .option('--dated <day>', 'the day the figures of --set are of, such as 2026-11-25');
  const withToday = (command: Command): Command =>
    withSets(command).option('--today <day>', 'the day by which ages are told, instead of the day it is');
  withToday(root.command('compare <case>').description('compare the routes of a case, line by line'))
    .option('--json', 'print everything as JSON')
    .option('--csv <file>', 'also write the statement as CSV')
    .option('--workbook <file>', 'also write a workbook with live formulas')
    .action((file: string, options: CompareOptions) => compareCase(console, file, options));
  withSets(root.command('inputs <case>').description('list every input with its value, range, source and status'))
    .option('--further', 'list instead the figures that nobody gave and the case would take')
    .option('--json', 'print as JSON')
    .action((file: string, options: InputsOptions) => {
      listInputs(console, file, options);
    });
  withSets(root.command('workbook <case>').description('write a workbook whose formulas follow its inputs'))
    .requiredOption('--out <file>', 'the .xlsx file to write')
    .option('--trials <number>', 'how many trials of the difference to draw, 0 for none; 1000 by default')
    .action((file: string, options: WorkbookOptions) => writeWorkbook(console, file, options));
  withSets(root.command('trials <case>').description('draw trials and write every one of them down'))
    .requiredOption('--out <file>', 'the .csv or .xlsx file to write')
    .option('--result <id>', 'the result to look at', 'difference.total')
    .option('--trials <number>', 'how many trials, instead of what the case says')
    .option('--seed <number>', 'where the random streams start, instead of what the case says')
    .option('--years <number>', 'over how many years a trial is averaged, instead of what the case says')
    .action((file: string, options: TrialsOptions) => writeTrials(console, file, options));
  withSets(
    root
      .command('explain <case> <id>')
      .description('show how a figure was worked out, down to the inputs and their sources'),
  )
    .option('--lot <id>', 'explain it as it would be with this lot in its line')
    .option('--json', 'print as JSON')
    .action((file: string, id: string, options: ExplainOptions) => {
      explainQuantity(console, file, id, options);
    });
  withSets(root.command('footprint <case>').description('landfill, energy, carbon, water and recycled content'))
    .option('--json', 'print as JSON')
    .action((file: string, options: FootprintOptions) => {
      showFootprint(console, file, options);
    });
  withSets(root.command('quality <case>').description('ash, dirt, brightness, water loop and strength of every route'))
    .option('--json', 'print as JSON')
    .action((file: string, options: QualityOptions) => {
      showQuality(console, file, options);
    });
  withSets(root.command('sensitivity <case>').description('what each input does to a result, one at a time'))
    .option('--result <id>', 'the result to look at', 'difference.total')
    .option('--share <percent>', 'move every input by this share of its figure instead of over its usual range')
    .option('--json', 'print as JSON')
    .action((file: string, options: SensitivityOptions) => {
      showSensitivity(console, file, options);
    });
  withSets(root.command('breakeven <case> [inputs...]').description('where a result turns as one input moves'))
    .option('--result <id>', 'the result to look at', 'difference.total')
    .option('--target <number>', 'the value at which it turns', '0')
    .option('--json', 'print as JSON')
    .action((file: string, inputs: string[], options: BreakEvenOptions) => {
      showBreakEven(console, file, inputs, options);
    });
  withSets(root.command('table <case> <across> <down>').description('a result over two inputs, each ID=FROM..TO/COUNT'))
    .option('--result <id>', 'the result to look at', 'difference.total')
    .option('--json', 'print as JSON')
    .action((file: string, across: string, down: string, options: TableOptions) => {
      showTable(console, file, across, down, options);
    });
  withSets(
    root
      .command('months <case>')
      .description("a result at the prices of a mill's own months: how often each route won"),
  )
    .option('--result <id>', 'the result to look at', 'difference.total')
    .option('--points <file>', 'rows of month, pulp price, recovered price, instead of the months of the case')
    .option('--pulp <id>', 'the input that pulp prices are of')
    .option('--recovered <id>', 'the input that recovered prices are of')
    .option('--json', 'print as JSON')
    .action((file: string, options: MonthsOptions) => {
      showMonths(console, file, options);
    });
  withSets(root.command('uncertainty <case>').description('draw what is uncertain and show how a result spreads'))
    .option('--result <id>', 'the result to look at', 'difference.total')
    .option('--trials <number>', 'how many trials, instead of what the case says')
    .option('--seed <number>', 'where the random streams start, instead of what the case says')
    .option('--years <number>', 'over how many years a trial is averaged, instead of what the case says')
    .option('--json', 'print as JSON')
    .action((file: string, options: UncertaintyOptions) => {
      showUncertainty(console, file, options);
    });
  withSets(root.command('invest <case>').description('the investment plan: flows by year, and what it returns'))
    .option('--json', 'print as JSON')
    .action((file: string, options: InvestOptions) => {
      showInvestment(console, file, options);
    });
  withSets(root.command('reconcile <case>').description('measured figures beside computed ones, and the gaps'))
    .option('--json', 'print as JSON')
    .action((file: string, options: ReconcileOptions) => {
      showReconciliation(console, file, options);
    });
  withSets(root.command('scenarios <case>').description('the scenarios of a case side by side'))
    .option('--json', 'print as JSON')
    .action((file: string, options: ScenariosOptions) => {
      showScenarios(console, file, options);
    });
  withSets(root.command('limits <case>').description('every limit in every route, and the largest recovered share'))
    .option('--json', 'print as JSON')
    .action((file: string, options: LimitsOptions) => {
      showLimits(console, file, options);
    });
  withSets(root.command('lots <case>').description('suppliers’ lots side by side, and what may be paid for them'))
    .option('--json', 'print as JSON')
    .action((file: string, options: LotsOptions) => showLots(console, file, options));
  withSets(
    root.command('line <case> <route> [line]').description('walk a preparation line: every stage, every component'),
  )
    .option('--json', 'print as JSON')
    .action((file: string, route: string, line: string | undefined, options: LineOptions) => {
      showLine(console, file, route, line, options);
    });
  withToday(root.command('report <case>').description('write the report of a case, or its page for a board, on paper'))
    .requiredOption(
      '--out <file>',
      'where it goes; .html stands by itself, .pdf is printed through an installed browser',
    )
    .option('--board', 'only the one page for a board')
    .option('--letter', 'US Letter instead of A4')
    .action((file: string, options: ReportOptions) => {
      writeReport(console, file, options);
    });
  withToday(root.command('check <case>').description('say what is wrong with a case, and what to look at')).action(
    (file: string, options: CheckOptions) => {
      check(console, file, options);
    },
  );
  for (const command of root.commands)
    command.exitOverride().configureOutput({ writeOut: console.say, writeErr: console.complain });
  return root;
}

/** Runs one command and says how it ended. */
export async function run(args: readonly string[], console: Console): Promise<number> {
  try {
    await program(console).parseAsync(args, { from: 'user' });
    return codes.done;
  } catch (fault) {
    if (fault instanceof Refusal) {
      for (const sentence of fault.sentences) console.complain(`${sentence}\n`);
      return codes.problems;
    }
    if (fault instanceof WrongUse) {
      console.complain(`${fault.message}\n`);
      return codes.wrongUse;
    }
    if (fault instanceof CommanderError) return fault.exitCode === 0 ? codes.done : codes.wrongUse;
    throw fault;
  }
}
