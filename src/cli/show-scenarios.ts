import {
  type ScenarioColumn,
  type ScenarioTable,
  formatNumber,
  problemSentence,
  scenarioTable,
  unitLabel,
} from '../index.ts';
import { textTable } from '../report/text-table.ts';
import type { Console } from './console.ts';
import { type SetOptions, openWithSets, wholly } from './open-with-sets.ts';

export interface ScenariosOptions extends SetOptions {
  readonly json?: boolean;
}

/** Prints the scenarios of a case side by side: what they change, and what comes of it. */
export function showScenarios(console: Console, file: string, options: ScenariosOptions): void {
  const table = scenarioTable(wholly(openWithSets(file, options)));
  if (options.json === true) {
    console.say(`${JSON.stringify(table, null, 2)}\n`);
    return;
  }
  console.say(table.columns.length === 1 ? 'This case has no scenarios.\n' : page(table, console.locale));
}

function page(table: ScenarioTable, locale: string): string {
  const [base] = table.columns;
  const heads = ['', 'unit', ...table.columns.map(({ scenario }) => scenario?.label ?? 'as the case stands (base)')];
  const figures = table.inputs.map(({ label, where, unit }, row) => [
    named(label, where),
    unitLabel(unit),
    ...table.columns.map((column) => written(column, row, base, locale)),
  ]);
  const results = table.results.flatMap(({ label, where, unit }, row) => [
    [named(label, where), unitLabel(unit), ...table.columns.map(({ values }) => money(values[row], locale))],
    [
      'less the base',
      unitLabel(unit),
      ...table.columns.map(({ scenario, values }) =>
        scenario === null
          ? ''
          : formatNumber((values[row] ?? NaN) - (base?.values[row] ?? NaN), { locale, decimals: 2, sign: true }),
      ),
    ],
  ]);
  const limits = [
    'limits broken',
    '',
    ...table.columns.map(({ limits: readings }) =>
      String(readings.filter(({ kept, value }) => !kept && !Number.isNaN(value)).length),
    ),
  ];
  const problems = table.columns.flatMap(({ scenario, problems: all }) =>
    all.map((problem) => `${scenario?.label ?? ''}: ${problemSentence(problem)}`),
  );
  const grid = textTable(
    heads.map((head, place) => ({ head, holds: place < 2 ? 'words' : 'figures' })),
    [...figures, ...results, limits],
  );
  return `${[grid, ...problems].join('\n')}\n`;
}

/** The figure of a scenario; those it leaves as they are stand in brackets. */
function written({ figures }: ScenarioColumn, row: number, base: ScenarioColumn | undefined, locale: string): string {
  const figure = figures[row] ?? '';
  const text = figure === '' ? 'none' : formatNumber(figure, { locale });
  return base !== undefined && base.figures !== figures && base.figures[row] === figure ? `(${text})` : text;
}

function money(value: number | undefined, locale: string): string {
  return value === undefined || Number.isNaN(value) ? 'not yet' : formatNumber(value, { locale, decimals: 2 });
}

function named(label: string, where: string): string {
  return where === '' ? label : `${label} (${where})`;
}
