import type { Scenario } from '../../case/what-if.ts';
import { withWhatIf } from '../../case/edits/what-if-edits.ts';
import { type Outcome, outcome } from '../../case/problem.ts';
import { type OpenCase, changeInput, workOut } from '../open-case.ts';
import { onlyScenario } from './with-scenario.ts';

/** Gives an input another figure in one scenario, as typed; null takes the scenario's figure away, so that the case's holds again. */
export function changeScenario(
  open: OpenCase,
  scenarioId: string,
  inputId: string,
  typed: string | null,
): Outcome<OpenCase> {
  const scenario = open.content.scenarios?.find(({ id }) => id === scenarioId);
  if (scenario === undefined)
    return outcome(open, [
      {
        kind: 'unknown reference',
        path: 'scenarios',
        given: scenarioId,
        what: 'scenario',
        known: (open.content.scenarios ?? []).map(({ id }) => id),
      },
    ]);
  const others = Object.fromEntries(Object.entries(scenario.inputs).filter(([id]) => id !== inputId));
  if (typed === null) return withInputs(open, scenario, others);
  // Where other figures of the scenario cannot be worked out, this one is judged by the case: else two of them could never be mended.
  const asScenario = workOut(onlyScenario(open.content, { inputs: others }));
  const from = asScenario.ok ? asScenario.value : open;
  const changed = changeInput(from, inputId, typed, { source: `Scenario: ${scenario.label}` });
  if (!changed.ok) return changed;
  const figure = changed.value.content.inputs[inputId];
  return withInputs(open, scenario, figure === undefined ? others : { ...others, [inputId]: figure });
}

function withInputs(open: OpenCase, scenario: Scenario, inputs: Scenario['inputs']): Outcome<OpenCase> {
  return workOut(withWhatIf(open.content, { kind: 'put scenario', scenario: { ...scenario, inputs } }));
}
