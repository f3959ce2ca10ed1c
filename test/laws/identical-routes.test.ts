import { describe, expect, test } from 'vitest';
import type { Case } from '../../src/case/case.ts';
import type { Changes } from '../../src/kernel/evaluate/decimal.ts';
import { evaluateDecimal } from '../../src/kernel/evaluate/decimal.ts';
import { evaluateFloat, floatProgram } from '../../src/kernel/evaluate/float.ts';
import { type Model, buildModel } from '../../src/paper/model.ts';
import { decimalReader } from '../support/decimal-reader.ts';
import { randomCase } from '../support/random-case.ts';
import { randomFigures } from '../support/random-figures.ts';

/** The base route twice, under two names. */
function twin(content: Case): Case {
  const [base] = content.routes;
  if (base === undefined) throw new Error('A case without routes');
  const own = Object.entries(content.inputs).filter(([id]) => !id.startsWith('other.'));
  const copies = own
    .filter(([id]) => id.startsWith('base.'))
    .map(([id, given]): [string, typeof given] => [id.replace(/^base\./u, 'other.'), given]);
  return {
    ...content,
    routes: [base, { ...base, id: 'other', label: 'The same again' }],
    inputs: Object.fromEntries([...own, ...copies]),
  };
}

/** What the one route has, the other has. */
function sameFigures(figures: Changes): Changes {
  const own = [...figures].filter(([id]) => !id.startsWith('other.'));
  return new Map([
    ...own,
    ...own
      .filter(([id]) => id.startsWith('base.'))
      .map(([id, digits]): [string, string] => [id.replace(/^base\./u, 'other.'), digits]),
  ]);
}

function differenceIds(model: Model): string[] {
  return [...model.graph.positions.keys()].filter((id) => id.startsWith('difference.'));
}

// Law: a thing differs from itself by nothing, not by a rounding error.
describe('two identical routes', () => {
  test.each(Array.from({ length: 15 }, (_, at) => ({ seed: 3001 + at })))(
    'differ by exactly zero in every line (seed $seed)',
    ({ seed }) => {
      const model = buildModel(twin(randomCase(seed)));
      const figures = sameFigures(randomFigures(model, seed));
      const exact = decimalReader(model, evaluateDecimal(model.graph, figures));
      const fast = evaluateFloat(floatProgram(model.graph), figures);
      const ids = differenceIds(model);

      expect(ids.length).toBeGreaterThan(60);
      expect(ids.filter((id) => !exact(id).isZero())).toEqual([]);
      // Plus or minus nothing.
      expect(ids.filter((id) => fast[model.graph.positions.get(id)!] !== 0)).toEqual([]);
      expect(exact('base.cost.total').isZero()).toBe(false);
    },
  );
});
