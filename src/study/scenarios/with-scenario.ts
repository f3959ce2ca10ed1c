import type { Case } from '../../case/case.ts';
import type { Scenario } from '../../case/what-if.ts';

/** The case as it would be with the figures of a scenario. */
export function withScenario(content: Case, { inputs }: Pick<Scenario, 'inputs'>): Case {
  return { ...content, inputs: { ...content.inputs, ...inputs } };
}

/** The same without any other what-if but the limits, which would only be checked again and again. */
export function onlyScenario(content: Case, scenario: Pick<Scenario, 'inputs'>): Case {
  const { scenarios: _scenarios, uncertainty: _uncertainty, ranges: _ranges, ...rest } = content;
  return withScenario(rest, scenario);
}
