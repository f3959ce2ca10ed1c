import type { Case } from '../case/case.ts';
import type { Uncertainty } from '../case/what-if.ts';
import type { Graph } from '../kernel/graph/graph.ts';
import { buildModel } from '../paper/model.ts';
import { limitedResults } from './limits/watched-limit.ts';
import { withScenario } from './scenarios/with-scenario.ts';

/** What is asked of a case, without what names something that the case no longer has. */
export function keptWhatIf(content: Case, graph: Graph): Case {
  const { ranges, limits, scenarios, uncertainty, months, ...rest } = content;
  // A share that nobody gives any more is a result of the same name: only what is an input still counts.
  const inputs = new Set(graph.inputs.map(({ id }) => id));
  const known = (id: string): boolean => inputs.has(id);
  const judged = Object.entries(ranges ?? {}).filter(([id]) => known(id));
  const watched = (limits ?? []).filter((limit) => limitedResults(limit, content, graph).length > 0);
  return {
    ...rest,
    ...(judged.length === 0 ? {} : { ranges: Object.fromEntries(judged) }),
    ...(watched.length === 0 ? {} : { limits: watched }),
    ...(scenarios === undefined
      ? {}
      : { scenarios: scenarios.map((scenario) => keptScenario(content, scenario, known)) }),
    ...(uncertainty === undefined ? {} : { uncertainty: keptUncertainty(uncertainty, known) }),
    ...(months !== undefined && known(months.pulp) && known(months.recovered) ? { months } : {}),
  };
}

type Scenario = NonNullable<Case['scenarios']>[number];

/** A scenario may give an input that exists only because it is given: the model with its figures says which are without a place. */
function keptScenario(content: Case, scenario: Scenario, known: (id: string) => boolean): Scenario {
  if (Object.keys(scenario.inputs).every(known)) return scenario;
  const strange = new Set(
    buildModel(withScenario(content, scenario)).problems.flatMap((problem) =>
      problem.kind === 'unknown input' ? [problem.id] : [],
    ),
  );
  const inputs = Object.fromEntries(Object.entries(scenario.inputs).filter(([id]) => !strange.has(id)));
  return { ...scenario, inputs };
}

function keptUncertainty(uncertainty: Uncertainty, known: (id: string) => boolean): Uncertainty {
  const { correlations = [], ...rest } = uncertainty;
  const kept = correlations.filter(({ one, other }) => known(one) && known(other));
  return {
    ...rest,
    inputs: Object.fromEntries(Object.entries(rest.inputs).filter(([id]) => known(id))),
    ...(kept.length === 0 ? {} : { correlations: kept }),
  };
}
