import type { Problem } from '../../case/problem.ts';
import type { Scenario } from '../../case/what-if.ts';
import { type InputDeclaration, inForce } from '../../kernel/graph/input-declaration.ts';
import { nodeNamed } from '../../kernel/graph/graph.ts';
import { npvId } from '../investment/npv-id.ts';
import { type LimitReading, limitReadings } from '../limits/limit-readings.ts';
import type { OpenCase } from '../open-case.ts';
import { ScenarioDesk } from './scenario-desk.ts';

/** The case as it stands, or as it would be in a scenario. */
export interface ScenarioColumn {
  /** Null for the case as it stands, which all others are compared with. */
  readonly scenario: Scenario | null;
  /** How many inputs have another figure than in the case. */
  readonly changes: number;
  /** Figures in force, in the order of the rows of inputs; "" where there is none. */
  readonly figures: readonly string[];
  /** In the order of the rows of results; NaN where one cannot be worked out. */
  readonly values: readonly number[];
  readonly limits: readonly LimitReading[];
  /** Why the scenario cannot be worked out at all. */
  readonly problems: readonly Problem[];
}

export interface ScenarioInputRow {
  readonly id: string;
  readonly label: string;
  readonly where: string;
  readonly unit: string;
}

export interface ScenarioResultRow {
  readonly id: string;
  readonly label: string;
  /** Label of the route it belongs to; "" for a difference and for the plan. */
  readonly where: string;
  readonly unit: string;
}

/** Scenarios side by side: inputs that any of them changes, and the results that matter. */
export interface ScenarioTable {
  readonly columns: readonly ScenarioColumn[];
  readonly inputs: readonly ScenarioInputRow[];
  readonly results: readonly ScenarioResultRow[];
}

export function scenarioTable(open: OpenCase): ScenarioTable {
  const scenarios = open.content.scenarios ?? [];
  const results = resultRows(open);
  const desk = new ScenarioDesk(
    open,
    results.map(({ id }) => id),
  );
  const worked = scenarios.map((scenario) => ({ scenario, found: desk.work(scenario) }));
  const ids = [...new Set(scenarios.flatMap(({ inputs }) => Object.keys(inputs)))];
  const rows = ids.flatMap((id): readonly InputDeclaration[] => {
    const input =
      inputOf(open, id) ?? worked.map(({ found }) => found.inputs.get(id)).find((each) => each !== undefined);
    return input === undefined ? [] : [input];
  });
  const base = rows.map(({ id }) => figureOf(open, id));
  return {
    columns: [
      {
        scenario: null,
        changes: 0,
        figures: base,
        values: results.map(({ id }) => open.values.number(id)),
        limits: limitReadings(open),
        problems: [],
      },
      ...worked.map(({ scenario, found }): ScenarioColumn => {
        const fails = found.problems.length > 0;
        const figures = rows.map(({ id }, row) => (fails ? '' : (found.figures.get(id) ?? base[row] ?? '')));
        const changes = fails ? 0 : figures.filter((figure, row) => figure !== base[row]).length;
        const { values, limits, problems } = found;
        return { scenario, changes, figures, values, limits, problems };
      }),
    ],
    inputs: rows.map(({ id, label, where, entryUnit }) => ({ id, label, where: where ?? '', unit: entryUnit })),
    results,
  };
}

function inputOf({ model }: OpenCase, id: string): InputDeclaration | null {
  return model.graph.inputs.find((each) => each.id === id) ?? null;
}

function figureOf(open: OpenCase, id: string): string {
  const input = inputOf(open, id);
  return input === null ? '' : (inForce(input) ?? '');
}

function resultRows({ content, model }: OpenCase): readonly ScenarioResultRow[] {
  const { base, with: other } = content.compare;
  const labels = new Map(content.routes.map(({ id, label }) => [id, label]));
  const ids = [
    `${base}.cost.total`,
    `${other}.cost.total`,
    'difference.total',
    'difference.totalPerYear',
    `${base}.footprint.total`,
    `${other}.footprint.total`,
    'difference.footprint.total',
    // In the model only where there is an investment plan.
    npvId,
  ];
  return ids
    .filter((id) => model.graph.positions.has(id))
    .map((id) => {
      const { declaration, unit } = nodeNamed(model.graph, id);
      const where = labels.get(id.split('.')[0] ?? '') ?? '';
      return { id, label: declaration?.label ?? id, where, unit: unit.text };
    });
}
