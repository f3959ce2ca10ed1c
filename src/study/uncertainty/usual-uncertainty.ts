import type { GivenDistribution, Uncertainty } from '../../case/what-if.ts';
import { inputRange } from '../input-range.ts';
import type { OpenCase } from '../open-case.ts';
import { sensitivity } from '../sensitivity.ts';

/** Inputs that move the result by less than this share of the largest swing are left as they are. */
const leastSwing = 0.02;

/** What is asked of money is chosen, and not uncertain. */
const chosenRate = 'capital.rate';

/**
 * What is drawn while nobody has said what is uncertain: inputs that both routes share, such as prices, triangular over their judged or
 * usual range around the figure in force. Figures of single routes stay fixed, for the same machine would be drawn twice and differently.
 */
export function usualUncertainty(open: OpenCase, resultId: string): Uncertainty {
  const routes = open.content.routes.map(({ id }) => `${id}.`);
  const swings = sensitivity(open, resultId).judged.filter(
    ({ id }) => id !== chosenRate && !routes.some((route) => id.startsWith(route)),
  );
  const largest = swings[0]?.swing ?? 0;
  const inputs = swings
    .filter(({ swing }) => swing >= leastSwing * largest)
    .flatMap(({ id }): readonly [string, GivenDistribution][] => {
      const input = open.model.graph.inputs.find((each) => each.id === id);
      const range = input === undefined ? null : inputRange(input, 'usual range');
      if (range === null) return [];
      return [[id, { law: 'triangular', low: String(range.low), high: String(range.high) }]];
    });
  return { trials: 10_000, seed: 20_260, years: 10, inputs: Object.fromEntries(inputs) };
}
