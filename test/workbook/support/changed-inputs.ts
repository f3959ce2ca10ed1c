import { changeInput } from '../../../src/index.ts';
import { inputRange } from '../../../src/study/input-range.ts';
import type { OpenCase } from '../../../src/study/open-case.ts';
import { type ModelLayout, modelLayout } from '../../../src/workbook/model/model-layout.ts';
import { SheetNames } from '../../../src/workbook/sheet-names.ts';
import { inputColumns } from '../../../src/workbook/model/geometry.ts';
import { valueOf } from '../../examples/demonstration.ts';
import { Dice } from '../../support/dice.ts';

/** An input that is given another figure, and the cell in which a person would type it. */
export interface ChangedInput {
  readonly id: string;
  readonly figure: number;
  readonly row: number;
  readonly column: number;
}

/** So many inputs, drawn from those that can move, each somewhere in its range; and the case in which they are changed. */
export function changedInputs(
  open: OpenCase,
  seed: number,
  count: number,
): { changes: readonly ChangedInput[]; changed: OpenCase } {
  const dice = new Dice(seed);
  const layout = modelLayout(open, new SheetNames());
  const movable = open.model.graph.inputs.filter((input) => inputRange(input, 'usual range') !== null);
  const chosen = new Map<string, ChangedInput>();
  while (chosen.size < Math.min(count, movable.length)) {
    const input = dice.pick(movable);
    const range = inputRange(input, 'usual range');
    if (range === null) continue;
    chosen.set(input.id, changedInput(layout, input.id, Number(dice.between(range.low, range.high).toPrecision(6))));
  }
  const changes = [...chosen.values()];
  return { changes, changed: withChanges(open, changes) };
}

export function changedInput(layout: ModelLayout, id: string, figure: number): ChangedInput {
  return { id, figure, row: layout.inputs.rows.get(id) ?? 0, column: inputColumns.value };
}

export function withChanges(open: OpenCase, changes: readonly Pick<ChangedInput, 'id' | 'figure'>[]): OpenCase {
  const source = { source: 'Changed by the test' };
  return changes.reduce((before, { id, figure }) => valueOf(changeInput(before, id, String(figure), source)), open);
}
