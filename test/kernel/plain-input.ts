import type { InputDeclaration } from '../../src/kernel/graph/input-declaration.ts';

/** An input with a usual figure (null: none), in the unit given; whatever matters to a test is changed with `more`. */
export function plainInput(
  id: string,
  value: string | null,
  unit = '1',
  more: Partial<InputDeclaration> = {},
): InputDeclaration {
  return {
    id,
    label: `Label of ${id}`,
    entryUnit: unit,
    factor: '1',
    usual: { value, low: null, high: null, provenance: { status: 'invented', source: 'Invented for a test' } },
    judged: null,
    allowed: {},
    given: null,
    ...more,
  };
}
