import type { Case } from './case.ts';
import { caseSchema, formatVersion } from './schema.ts';

/**
 * The canonical text of a case: keys in the order of the schema, inputs sorted by id and one to a line, so that two versions of a
 * case differ only where the case differs. Reading it back gives the same case.
 */
export function writeCase(content: Case): string {
  const { inputs, ...rest } = content;
  const ordered = inOrder({ format: 'tonne', version: formatVersion, ...rest, inputs: {} });
  const figures = Object.keys(inputs)
    .sort()
    .map(
      (id) =>
        `    ${JSON.stringify(id)}: ${JSON.stringify(withOrderedKeys(inputs[id] ?? {}, ['value', 'unit', 'status', 'source']))}`,
    );
  const body = JSON.stringify(ordered, null, 2);
  if (figures.length === 0) return `${body}\n`;
  return `${body.replace(/"inputs": \{\}\n\}$/u, `"inputs": {\n${figures.join(',\n')}\n  }\n}`)}\n`;
}

function inOrder(content: Record<string, unknown>): Record<string, unknown> {
  return withOrderedKeys(content, Object.keys(caseSchema.entries));
}

function withOrderedKeys(content: object, keys: readonly string[]): Record<string, unknown> {
  const entries = new Map(Object.entries(content));
  return Object.fromEntries(keys.filter((key) => entries.has(key)).map((key) => [key, entries.get(key)]));
}
