import type { Case } from '../case/case.ts';
import type { InputDeclaration } from '../kernel/graph/input-declaration.ts';
import { givenFigure } from './entry.ts';
import { isCarbonFactor } from './footprint/carbon-inputs.ts';
import type { Model } from './model.ts';

/**
 * The model of a case in which one figure that somebody gave has become another: the same calculation, for its shape depends on which figures
 * are given and never on how large they are. Null where that does not hold: the figure is given for the first time, or is a carbon factor,
 * whose source and boundary count as well.
 */
export function replaceFigure(model: Model, content: Case, id: string): Model | null {
  const given = content.inputs[id];
  const input = model.graph.inputs.find((each) => each.id === id);
  if (given === undefined || input === undefined || input.given === null || isCarbonFactor(input)) return null;
  const found = givenFigure({ ...input, unit: input.entryUnit }, given);
  const declared: InputDeclaration = { ...input, given: found.ok ? found.value : null };
  const inputs = model.graph.inputs.map((each) => (each === input ? declared : each));
  const others = model.problems.filter((problem) => !('id' in problem && problem.id === id));
  return {
    ...model,
    case: content,
    graph: { ...model.graph, inputs },
    problems: found.ok ? others : [...others, ...found.problems],
  };
}
