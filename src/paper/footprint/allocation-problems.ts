import type { Case } from '../../case/case.ts';
import type { Problem } from '../../case/problem.ts';
import type { InputDeclaration } from '../../kernel/graph/input-declaration.ts';
import { isCarbonFactor } from './carbon-inputs.ts';

/** A closed loop and substitution share a first life's burden otherwise than the cut-off rule, by which every footprint here is made. */
const foreignRules: ReadonlySet<string> = new Set(['closed loop', 'substitution']);

/** Carbon factors that were given by another rule of allocation than the footprint's. */
export function allocationProblems({ inputs }: Case, declared: readonly InputDeclaration[]): readonly Problem[] {
  return declared.filter(isCarbonFactor).flatMap(({ id, label }): Problem[] => {
    const given = Object.hasOwn(inputs, id) ? inputs[id]?.allocation : undefined;
    return given === undefined || !foreignRules.has(given)
      ? []
      : [{ kind: 'wrong allocation', id, label, given, wanted: 'cut-off' }];
  });
}
