import type { InputDeclaration } from '../../src/kernel/graph/input-declaration.ts';
import { GraphBuilder } from '../../src/kernel/graph/graph-builder.ts';
import type { Quantity } from '../../src/kernel/expression/quantity.ts';
import type { OpenCase } from '../../src/study/open-case.ts';
import { plainInput } from '../kernel/plain-input.ts';

/** A calculation of a published example, opened so that the studies of a case can be asked of it. They read nothing of a case but its graph. */
export function openGraph(build: (sheet: ExampleSheet) => void): OpenCase {
  const sheet = new ExampleSheet();
  build(sheet);
  return { model: { graph: sheet.builder.build() }, content: { currency: 'GBP', routes: [] } } as unknown as OpenCase;
}

export class ExampleSheet {
  readonly builder = new GraphBuilder();

  /** An input with its figure and, if the example gives one, the range it can have. */
  input(id: string, value: string, unit = '1', range?: readonly [string, string]): Quantity {
    const usual: InputDeclaration['usual'] = {
      value,
      low: range?.[0] ?? null,
      high: range?.[1] ?? null,
      provenance: { status: 'read', source: 'The example' },
    };
    return this.builder.input(plainInput(id, value, unit, { usual }), unit);
  }

  define(id: string, quantity: Quantity): Quantity {
    return this.builder.define({ id, label: id, unit: quantity.unit.text }, quantity);
  }
}
