import type { Case } from '../case/case.ts';
import type { Problem } from '../case/problem.ts';
import type { GivenRange, Scenario } from '../case/what-if.ts';
import type { InputDeclaration } from '../kernel/graph/input-declaration.ts';
import { givenFigure } from '../paper/entry.ts';
import { type Model, buildModel } from '../paper/model.ts';
import { outside, unknownInput } from './input-problems.ts';
import { monthProblems } from './months/month-problems.ts';
import { limitProblems } from './limits/limit-problems.ts';
import { withScenario } from './scenarios/with-scenario.ts';
import { uncertaintyProblems } from './uncertainty/uncertainty-problems.ts';

/** What is wrong with the ranges, limits, scenarios and spreads of a case, each named by its place in the file. */
export function whatIfProblems(content: Case, model: Model): readonly Problem[] {
  const inputs = new Map(model.graph.inputs.map((input) => [input.id, input]));
  const problems = [
    ...Object.entries(content.ranges ?? {}).flatMap(([id, range]) => rangeProblems(id, range, inputs)),
    ...limitProblems(content, model),
    ...(content.scenarios ?? []).flatMap((scenario) => scenarioProblems(content, scenario, inputs)),
    ...uncertaintyProblems(content.uncertainty, inputs),
    ...monthProblems(content.months, inputs),
  ];
  return problems.map((problem) =>
    problem.kind === 'unknown input' && model.workedOut.has(problem.id)
      ? { kind: 'worked out', id: problem.id }
      : problem,
  );
}

type Inputs = ReadonlyMap<string, InputDeclaration>;

function rangeProblems(id: string, { low, high }: GivenRange, inputs: Inputs): readonly Problem[] {
  const input = inputs.get(id);
  if (input === undefined) return [unknownInput(id, inputs)];
  if (Number(low) >= Number(high))
    return [
      {
        kind: 'wrong form',
        path: `ranges.${id}`,
        given: `${low} to ${high}`,
        allowed: 'a low end below the high end',
      },
    ];
  return [low, high].flatMap((given) => outside(input, given));
}

/** A figure of a scenario is judged like a figure of the case. An optional input exists only once it is mentioned: then the model is asked. */
function scenarioProblems(content: Case, scenario: Scenario, inputs: Inputs): readonly Problem[] {
  const strange = Object.keys(scenario.inputs).some((id) => !inputs.has(id));
  if (strange) {
    const { problems, workedOut } = buildModel(withScenario(content, scenario));
    const idle = Object.keys(scenario.inputs).filter((id) => workedOut.has(id));
    return [
      ...problems.filter(({ kind }) => kind !== 'no figure'),
      ...idle.map((id): Problem => ({ kind: 'worked out', id })),
    ];
  }
  return Object.entries(scenario.inputs).flatMap(([id, given]): readonly Problem[] => {
    const input = inputs.get(id);
    if (input === undefined) return [];
    const found = givenFigure({ ...input, unit: input.entryUnit }, given);
    return found.ok ? [] : found.problems;
  });
}
