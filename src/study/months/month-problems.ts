import type { PriceMonths } from '../../case/price-months.ts';
import type { Problem } from '../../case/problem.ts';
import type { InputDeclaration } from '../../kernel/graph/input-declaration.ts';
import { outside, unknownInput } from '../input-problems.ts';

/** What is wrong with the months of a case: inputs that it does not have, one input on both sides, prices that can never be. */
export function monthProblems(
  months: PriceMonths | undefined,
  inputs: ReadonlyMap<string, InputDeclaration>,
): readonly Problem[] {
  if (months === undefined) return [];
  const { pulp, recovered, points } = months;
  if (pulp === recovered)
    return [{ kind: 'wrong form', path: 'months.recovered', given: recovered, allowed: 'another input than "pulp"' }];
  return (['pulp', 'recovered'] as const).flatMap((side): readonly Problem[] => {
    const input = inputs.get(months[side]);
    if (input === undefined) return [unknownInput(months[side], inputs)];
    return points.flatMap((point) => outside(input, point[side]));
  });
}
