import type { InputView, ScenarioColumn, ScenarioTable, Spread, Swing } from '../../../../../src/index.ts';

/** One input beside all scenarios. */
export interface InputRow {
  readonly id: string;
  readonly label: string;
  readonly where: string;
  readonly unit: string;
  /** The figure in force in the case, plain digits; "" where it has none. */
  readonly base: string;
  readonly cells: readonly InputCell[];
}

export interface InputCell {
  readonly scenario: string;
  readonly scenarioLabel: string;
  /** What the scenario gives, or the figure of the case where it gives none. */
  readonly isChanged: boolean;
  readonly view: InputView;
}

/** How many of the inputs that no scenario changes are offered. */
const offered = 12;

/**
 * Rows of inputs: those that any scenario changes, then, where they are wanted, the judged inputs that move the result most and those
 * that somebody named.
 */
export function inputRows(
  table: ScenarioTable,
  spread: Spread,
  more: { readonly movers: readonly Pick<Swing, 'id'>[]; readonly named: readonly string[] } | null,
): readonly InputRow[] {
  const changed = table.inputs.map((row) => row.id);
  const others = more === null ? [] : [...more.movers.slice(0, offered).map(({ id }) => id), ...more.named];
  return [...new Set([...changed, ...others])].flatMap((id) => {
    const place = changed.indexOf(id);
    const known = table.inputs[place] ?? spread.inputs[id];
    if (known === undefined) return [];
    const base = spread.inputs[id]?.value ?? '';
    const plain = spread.inputs[id] ?? blankInput(id, known.label, known.where, known.unit);
    const cells = table.columns.flatMap((column) => cellOf(column, place, plain));
    return [{ id, label: known.label, where: known.where, unit: known.unit, base, cells }];
  });
}

function cellOf(
  { scenario, figures, problems }: ScenarioColumn,
  place: number,
  plain: InputView,
): readonly InputCell[] {
  if (scenario === null) return [];
  const given = scenario.inputs[plain.id];
  const worked = problems.length === 0 ? figures[place] : undefined;
  // The boundary would ask for a source in the slot; a figure of a scenario names the scenario as its source.
  const { boundary: _boundary, ...view } = plain;
  return [
    {
      scenario: scenario.id,
      scenarioLabel: scenario.label,
      isChanged: given !== undefined,
      view:
        given === undefined
          ? { ...view, touched: false }
          : {
              ...view,
              value: worked ?? given.value,
              touched: true,
              status: given.status ?? 'none',
              source: given.source ?? '',
            },
    },
  ];
}

/** An input that exists in scenarios only. */
function blankInput(id: string, label: string, where: string, unit: string): InputView {
  const unknown = { low: null, high: null, allowed: {}, status: 'none', source: '', note: '', usual: null } as const;
  return { ...unknown, id, label, where, unit, value: '', touched: false };
}
