import type { Scenario } from '../../../../../src/index.ts';
import { newId } from '../new-id.ts';

const longestLabel = 200;

/** The same figures under another name, to be changed from there. */
export function copiedScenario(scenario: Scenario, taken: readonly string[]): Scenario {
  const mark = ' (copy)';
  const label = `${scenario.label.slice(0, longestLabel - mark.length)}${mark}`;
  return { ...scenario, id: newId(label, 'scenario', taken), label };
}
