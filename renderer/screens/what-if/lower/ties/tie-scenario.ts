import type { BreakEven, Scenario } from '../../../../../src/index.ts';
import { newId } from '../new-id.ts';
import { plainDigits } from '../plain-digits.ts';

const longestLabel = 200;

/** A scenario in which one input stands where the routes tie, or the plan earns nothing: "Pulp price at 414". */
export function tieScenario(
  { id, unit }: Pick<BreakEven, 'id' | 'unit'>,
  at: number,
  words: { readonly name: string; readonly figure: string; readonly title: string },
  taken: readonly string[],
): Scenario {
  const end = ` at ${words.figure}`;
  const label = `${words.name.slice(0, longestLabel - end.length)}${end}`;
  const inputs = { [id]: { value: plainDigits(at), unit, status: 'derived', source: words.title } } as const;
  return { id: newId(label, 'tie', taken), label, note: `${words.title}: this input alone is moved there.`, inputs };
}
