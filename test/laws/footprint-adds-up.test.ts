import { describe, expect, test } from 'vitest';
import { evaluateFloat, floatProgram } from '../../src/kernel/evaluate/float.ts';
import { scopeIdOf, scopes } from '../../src/paper/footprint/footprint.ts';
import type { RouteModel } from '../../src/paper/route.ts';
import { type RandomModel, randomModel } from '../support/random-figures.ts';
import { madeOf } from './made-of.ts';

// Laws of a footprint, over random cases: what is told by scope is what is told by cause, and what stands beside is in no sum.
const cases = Array.from({ length: 60 }, (_, at) => {
  const each = randomModel(11_001 + at);
  return { ...each, at: reader(each) };
});

function reader({ model, figures }: RandomModel): (id: string) => number {
  const values = evaluateFloat(floatProgram(model.graph), figures);
  return (id) => values[model.graph.positions.get(id) ?? -1] ?? NaN;
}

const idOf = ({ plant }: RouteModel): string => plant.route.id;

function expectSum(parts: readonly number[], whole: number, message: string): void {
  const largest = Math.max(Math.abs(whole), ...parts.map(Math.abs));
  const sum = parts.reduce((before, part) => before + part, 0);
  expect(Number.isFinite(whole), message).toBe(true);
  expect(Math.abs(sum - whole), message).toBeLessThanOrEqual(1e-9 * largest);
}

describe(`over ${String(cases.length)} random cases`, () => {
  test('each scope is the sum of its causes, and the whole the sum of scopes and of causes', () => {
    for (const { seed, model, at } of cases)
      for (const route of model.routes) {
        const message = `seed ${String(seed)}, ${idOf(route)}`;
        for (const scope of scopes) {
          const own = route.causes.filter((cause) => cause.scope === scope);
          expectSum(
            own.map(({ quantityId }) => at(quantityId)),
            at(scopeIdOf(idOf(route), scope)),
            `${message}, ${scope}`,
          );
        }
        const whole = at(`${idOf(route)}.footprint.total`);
        expectSum(
          route.causes.map(({ quantityId }) => at(quantityId)),
          whole,
          `${message}, by cause`,
        );
        expectSum(
          scopes.map((scope) => at(scopeIdOf(idOf(route), scope))),
          whole,
          `${message}, by scope`,
        );
      }
  });

  test('no cause stands in two scopes, and none twice', () => {
    for (const { seed, model } of cases)
      for (const { causes } of model.routes) {
        const ids = causes.map(({ quantityId }) => quantityId);
        expect(new Set(ids).size, `seed ${String(seed)}`).toBe(ids.length);
      }
  });

  test('the difference is the one route less the other, by scope and in all', () => {
    for (const { seed, at } of cases) {
      for (const name of ['scope1', 'scope2', 'scope3', 'total'])
        expectSum(
          [at(`other.footprint.${name}`), -at(`base.footprint.${name}`)],
          at(`difference.footprint.${name}`),
          `seed ${String(seed)}, ${name}`,
        );
    }
  });

  test('methane is let out in part in the first year, more in 20 and 100, and all in the end', () => {
    for (const { seed, model, at } of cases)
      for (const route of model.routes) {
        const id = `${idOf(route)}.landfill.methane`;
        const [first, twenty, hundred, all] = [at(`${id}.1`), at(`${id}.20`), at(`${id}.100`), at(id)];
        const message = `seed ${String(seed)}, ${id}`;
        expect(first <= twenty && twenty <= hundred && hundred <= all, message).toBe(true);
        expectSum([at(`${idOf(route)}.footprint.ownLandfill`), at(`${idOf(route)}.footprint.landfill`)], all, message);
      }
  });

  test('what stands beside is in no sum: biogenic CO2, and the landfill that recovered paper might else have met', () => {
    for (const { seed, model } of cases)
      for (const route of model.routes) {
        const inSum = madeOf(model.graph, `${idOf(route)}.footprint.total`);
        const inDifference = madeOf(model.graph, 'difference.footprint.total');
        for (const beside of [
          `${idOf(route)}.footprint.biogenic`,
          `${idOf(route)}.landfill.avoidedMemo`,
          'carbon.inFibre',
        ]) {
          expect(model.graph.positions.has(beside), `seed ${String(seed)}, ${beside}`).toBe(true);
          expect(inSum.has(beside), `seed ${String(seed)}, ${beside}`).toBe(false);
          expect(inDifference.has(beside), `seed ${String(seed)}, ${beside}`).toBe(false);
        }
      }
  });
});
