import type { OpenCase } from '../study/open-case.ts';
import { ModelCells } from './model/model-cells.ts';
import { modelLayout } from './model/model-layout.ts';
import type { SheetPlan, WorkbookPlan } from './plan.ts';
import { SheetNames } from './sheet-names.ts';
import { aboutSheet } from './sheets/about-sheet.ts';
import { bridgeSheet } from './sheets/bridge-sheet.ts';
import { calculationSheet, fixedSheet } from './sheets/calculation-sheet.ts';
import { changeLogSheet } from './sheets/change-log-sheet.ts';
import { checksSheet } from './sheets/checks-sheet.ts';
import { footprintSheet } from './sheets/footprint-sheet.ts';
import { inputsSheet } from './sheets/inputs-sheet.ts';
import { investmentSheet } from './sheets/investment-sheet.ts';
import { moreSheets } from './sheets/more-sheets.ts';
import { scenariosSheet } from './sheets/scenarios-sheet.ts';
import { sensitivitySheet } from './sheets/sensitivity-sheet.ts';
import { sourcesSheet } from './sheets/sources-sheet.ts';
import { statementSheet } from './sheets/statement-sheet.ts';
import { uncertaintySheet } from './sheets/uncertainty-sheet.ts';
import type { WorkbookFacts } from './workbook-facts.ts';

/**
 * A case as a workbook: every quantity of its model a formula, results that follow, what the program worked out beside them, and the checks.
 * Whatever quantities the model has, each finds its sheet by its id.
 */
export function workbookPlan(open: OpenCase, facts: WorkbookFacts): WorkbookPlan {
  const sheetNames = new SheetNames();
  const fixedNames = [
    'About',
    'Statement',
    'Bridge',
    'Residues and footprint',
    'Sensitivity',
    'Scenarios',
    'Uncertainty',
    'Checks',
    'Sources',
    'Change log',
  ] as const;
  const [about, statement, bridge, residues, sensitivity, scenarios, uncertainty, checks, sources, changes] =
    fixedNames.map((name) => sheetNames.nameFor(name));
  const cells = new ModelCells(open, modelLayout(open, sheetNames));
  const { layout } = cells;
  const { sheet: checkSheet, verdict, names } = checksSheet(cells, checks!);
  const investment = investmentSheet(cells, verdict);
  const listed: readonly (readonly [SheetPlan, string])[] = [
    [inputsSheet(cells, verdict), 'every input, its figure to type over, its range and its source'],
    [statementSheet(cells, statement!, verdict), 'what a tonne costs by each route, by account'],
    [bridgeSheet(cells, bridge!, verdict), 'from the one whole cost to the other, step by step and line by line'],
    [footprintSheet(cells, residues!, verdict), 'what is left, burned and let off'],
    ...(investment === null ? [] : [[investment, 'the plan, years across'] as const]),
    [
      sensitivitySheet(cells, sensitivity!, verdict),
      'what each input does to the difference alone, and two of them together',
    ],
    [scenariosSheet(cells, scenarios!, verdict), 'the scenarios of the case side by side'],
    [uncertaintySheet(cells, uncertainty!, verdict, facts.trials), 'how the difference spreads'],
    ...moreSheets(cells, sheetNames, verdict),
    [checkSheet, 'mass closes, accounts and the bridge add up, results are those of the program'],
    ...layout.calculation.map(
      (each) => [calculationSheet(cells, each, verdict), 'calculation, one quantity a row'] as const,
    ),
    [fixedSheet(cells, verdict), 'numbers of definition that the formulas read'],
    [sourcesSheet(cells, sources!, verdict), 'where the figures come from'],
    [changeLogSheet(cells, changes!, verdict), 'what was changed, and lines to write down what is'],
  ];
  const words = listed.map(([{ name }, what]) => [name, what] as const);
  return {
    sheets: [aboutSheet(cells, about!, verdict, facts, words), ...listed.map(([sheet]) => sheet)],
    names: [...cells.names(), ...names],
  };
}
