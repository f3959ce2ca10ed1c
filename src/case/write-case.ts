import type { Case } from './case.ts';
import { formatVersion } from './schema.ts';
import { inSchemaOrder } from './shape.ts';

/**
 * The canonical text of a case: keys in the order of the schema, inputs sorted by id and one to a line, so that two versions of a
 * case differ only where the case differs. Reading it back gives the same case.
 */
export function writeCase(content: Case): string {
  const { inputs, ...rest } = inSchemaOrder({ format: 'tonne', version: formatVersion, ...content }) as Written;
  const figures = Object.entries(inputs).map(([id, given]) => `    ${JSON.stringify(id)}: ${JSON.stringify(given)}`);
  const group = figures.length === 0 ? '{}' : `{\n${figures.join(',\n')}\n  }`;
  // The inputs come last, so that their lines take the place of the closing brace.
  return `${JSON.stringify(rest, null, 2).replace(/\n\}$/u, '')},\n  "inputs": ${group}\n}\n`;
}

interface Written {
  readonly inputs: object;
}
