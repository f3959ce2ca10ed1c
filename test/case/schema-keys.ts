import { caseSchema } from '../../src/case/schema.ts';

interface Schema {
  readonly type: string;
  readonly entries?: Readonly<Record<string, Schema>>;
  readonly item?: Schema;
  readonly wrapped?: Schema;
  readonly value?: Schema;
}

/** A place in a case file, "*" standing for any entry of a list and any input: ".routes.*.lines.*.id". */
export interface SchemaKey {
  readonly path: string;
  readonly isOptional: boolean;
}

/** Every key that the format has. */
export const schemaKeys: readonly SchemaKey[] = keysOf(caseSchema, '');

function keysOf(schema: Schema, path: string): SchemaKey[] {
  if (schema.wrapped !== undefined) return keysOf(schema.wrapped, path);
  const inner = schema.item ?? schema.value;
  if (inner !== undefined) return keysOf(inner, `${path}.*`);
  return Object.entries(schema.entries ?? {}).flatMap(([key, each]) => {
    const here = `${path}.${key}`;
    return [{ path: here, isOptional: each.wrapped !== undefined }, ...keysOf(each, here)];
  });
}

/** A value in a file: where it hangs, by which key, and which place that is in the schema. */
export interface Spot {
  readonly parent: Record<string, unknown>;
  readonly key: string;
  readonly path: string;
}

/** Where the keys are ids of inputs, of lots, or codes of grades. */
const namedFreely = new Set([
  '.inputs',
  '.ranges',
  '.scenarios.*.inputs',
  '.uncertainty.inputs',
  '.lots.blend.shares',
  '.lots.blend.grades',
]);

/** Every value in the content of a file. */
export function spotsOf(value: unknown, path = ''): Spot[] {
  if (typeof value !== 'object' || value === null) return [];
  const parent = value as Record<string, unknown>;
  const isOpen = Array.isArray(value) || namedFreely.has(path);
  return Object.keys(parent).flatMap((key) => {
    const here = `${path}.${isOpen ? '*' : key}`;
    return [{ parent, key, path: here }, ...spotsOf(parent[key], here)];
  });
}
