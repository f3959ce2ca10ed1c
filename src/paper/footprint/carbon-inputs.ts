import type { InputDeclaration } from '../../kernel/graph/input-declaration.ts';

/** Factors that stand beside every inventory and in none: the effect of a change at the margin, and power by contract. */
export const besideInventory: ReadonlySet<string> = new Set(['carbon.gridMarginal', 'carbon.contract']);

/** A carbon factor is known by what it takes in; every other input has no boundary. */
export function isCarbonFactor({ id, usual }: InputDeclaration): boolean {
  return usual.provenance.details?.['boundary'] !== undefined || besideInventory.has(id);
}

/** A fact about the factor in force, its year or its set of warming potentials; "" where it is not known. */
export function factOf({ given, usual }: InputDeclaration, fact: 'date' | 'year' | 'gwp' | 'allocation'): string {
  return (given === null ? usual : given).provenance.details?.[fact] ?? '';
}
