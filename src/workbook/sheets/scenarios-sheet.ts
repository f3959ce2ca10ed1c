import { parseUnit } from '../../kernel/units/unit.ts';
import { type ScenarioTable, scenarioTable } from '../../study/scenarios/scenario-table.ts';
import { problemSentence } from '../../wording/problem-sentence.ts';
import { unitLabel } from '../../wording/unit-label.ts';
import { empty, heads, note, number, strong, text, told } from '../cells.ts';
import type { Verdict } from '../checks/verdict.ts';
import type { ModelCells } from '../model/model-cells.ts';
import { numberForm } from '../number-form.ts';
import type { Cell, SheetPlan } from '../plan.ts';
import { baseRows } from './base-rows.ts';
import { framed } from './framed.ts';

/** The scenarios of the case side by side: what each changes, what it comes to, and which limits it keeps. */
export function scenariosSheet(cells: ModelCells, name: string, verdict: Verdict): SheetPlan {
  const { open } = cells;
  const table = scenarioTable(open);
  const labels = table.columns.map(({ scenario }) => scenario?.label ?? 'The case as written');
  return framed({
    name,
    title: 'Scenarios',
    says: 'Results of the program at the moment of writing: they do not follow the inputs. Only the first figure does.',
    verdict,
    heads: heads('Figure', 'Of', 'Unit', ...labels),
    widths: [52, 30, 20, ...labels.map(() => 20)],
    rows: [
      ...baseRows(cells, open.model.difference.totalId, name, verdict),
      ...(table.columns.length > 1 ? [] : [[note('The case has no scenarios.')], []]),
      [strong('Inputs that a scenario changes')],
      ...inputRows(table),
      [],
      [strong('Results')],
      ...resultRows(table, open.content.currency),
      [],
      [strong('Limits')],
      ...limitRows(table),
      [],
      ...problemRows(table),
    ],
    frozenColumns: 1,
  });
}

function inputRows({ inputs, columns }: ScenarioTable): readonly (readonly Cell[])[] {
  return inputs.map(({ label, where, unit }, row) => [
    text(`   ${label}`),
    text(where),
    text(unitLabel(unit)),
    ...columns.map(({ figures }) => {
      const figure = figures[row] ?? '';
      return figure === '' ? empty : number(Number(figure), 'as typed', 'program');
    }),
  ]);
}

function resultRows({ results, columns }: ScenarioTable, currency: string): readonly (readonly Cell[])[] {
  return results.map(({ label, where, unit }, row) => [
    text(`   ${label}`),
    text(where),
    text(unitLabel(unit)),
    ...columns.map(({ values }) => told(values[row] ?? NaN, numberForm(parseUnit(unit), undefined, currency))),
  ]);
}

function limitRows({ columns }: ScenarioTable): readonly (readonly Cell[])[] {
  const [first] = columns;
  return (first?.limits ?? []).map(({ limit, routeLabel, unit }, row) => [
    text(`   ${limit.label}, ${limit.sense} ${limit.value}`),
    text(routeLabel),
    text(unitLabel(unit)),
    ...columns.map(({ limits }) => told(limits[row]?.value ?? NaN, 'quantity')),
  ]);
}

function problemRows({ columns }: ScenarioTable): readonly (readonly Cell[])[] {
  return columns.flatMap(({ scenario, problems }) =>
    problems.map((problem) => [text(`${scenario?.label ?? ''}: ${problemSentence(problem)}`)]),
  );
}
