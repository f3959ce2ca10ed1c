import { describe, expect, test } from 'vitest';
import { Failure } from '../../src/kernel/evaluate/failure.ts';
import { evaluateDecimal } from '../../src/kernel/evaluate/decimal.ts';
import { nodeAt } from '../../src/kernel/graph/graph.ts';
import { components } from '../../src/paper/components.ts';
import { decimalReader } from '../support/decimal-reader.ts';
import { Evaluation } from '../support/evaluation.ts';
import { type RandomModel, randomModel } from '../support/random-figures.ts';

const cases: readonly RandomModel[] = Array.from({ length: 30 }, (_, at) =>
  randomModel(6001 + at, { lines: 4, stages: 3 }),
);

const sum = (parts: readonly number[]): number => parts.reduce((total, part) => total + part, 0);

// Law: whatever shares are typed, something takes what they leave: the balancing line, the first grade, fibre, the usual outlet.
describe('over 30 random cases', () => {
  const readers = cases.map(({ seed, model, figures }) => ({
    seed,
    model,
    at: decimalReader(model, evaluateDecimal(model.graph, figures)),
  }));

  test('shares of the lines total 100 % of the stock', () => {
    for (const { seed, model, at } of readers) {
      for (const { plant } of model.routes) {
        const shares = plant.lines.map(({ id }) => at(`${id}.share`).toNumber());
        const stock = plant.lines.map(({ id }) => at(`${id}.stock`).toNumber());
        expect(sum(shares), `seed ${String(seed)}`).toBeCloseTo(1, 14);
        expect(sum(stock), `seed ${String(seed)}`).toBeCloseTo(at(`${plant.route.id}.machine.stock`).toNumber(), 13);
      }
    }
  });

  test('shares of the grades total 100 % of the feed', () => {
    for (const { seed, model, at } of readers) {
      for (const { plant } of model.routes) {
        for (const line of plant.route.lines.filter(({ recipe }) => recipe.length > 1)) {
          const shares = line.recipe.map(({ material }) => `${plant.route.id}.${line.id}.grade.${material}.share`);
          expect(sum(shares.map((id) => at(id).toNumber())), `seed ${String(seed)}`).toBeCloseTo(1, 14);
        }
      }
    }
  });

  test('components of a material total 100 %', () => {
    for (const { seed, model, at } of readers) {
      for (const { id } of model.case.materials) {
        const present = components.map((each) => `material.${id}.${each}`).filter((each) => has(model, each));
        expect(sum(present.map((each) => at(each).toNumber())), `seed ${String(seed)}, ${id}`).toBeCloseTo(1, 14);
      }
    }
  });

  test('additives of a place total what is added there', () => {
    for (const { seed, model, at } of readers) {
      for (const { plant } of model.routes) {
        const { id, additives } = plant.route;
        for (const [place, whole] of [
          ['wet end', 'wetEndAdditives'],
          ['surface', 'surfaceAdditives'],
        ] as const) {
          const there = additives.filter((additive) => additive.place === place);
          if (there.length === 0) continue;
          const parts = there.map((additive) => at(`${id}.additive.${additive.id}`).toNumber());
          expect(sum(parts), `seed ${String(seed)}`).toBeCloseTo(at(`${id}.machine.${whole}`).toNumber(), 14);
        }
      }
    }
  });

  test('outlets take the whole of a residue', () => {
    // What leaves the outlets' terms aside: every wet tonne at one charge costs the wet tonnes times that charge.
    for (const { seed, model, figures } of cases) {
      const uniform = new Map(figures);
      for (const { id } of model.graph.inputs) {
        if (/^destination\.\w+\.haulage$/u.test(id)) uniform.set(id, '7');
        if (/^destination\.\w+\.gateFee$/u.test(id)) uniform.set(id, '0');
      }
      const at = decimalReader(model, evaluateDecimal(model.graph, uniform));
      for (const { plant, residues } of model.routes) {
        for (const { stream } of residues) {
          const wet = at(`${plant.route.id}.residue.${stream}.wet`).toNumber();
          const cost = at(`${plant.route.id}.cost.residues.${stream}`).toNumber();
          expect(cost / 7, `seed ${String(seed)}, ${stream}`).toBeCloseTo(wet, 12);
        }
      }
    }
  });
});

describe('shares that exceed 100 %', () => {
  const found = cases.find(({ model }) => model.routes.some(({ plant }) => plant.lines.length >= 3));

  test('leave the balancing line without a share, and say that it began there', () => {
    if (found === undefined) throw new Error('No random case has three lines');
    const { model, figures } = found;
    const route = model.routes.find(({ plant }) => plant.lines.length >= 3)!.plant.route;
    const others = route.lines.filter((line) => line.id !== route.balance);
    const over = new Map(figures);
    for (const line of others) over.set(`${route.id}.${line.id}.share`, '60');

    const evaluation = new Evaluation(model, over);
    const balance = evaluation.outcome(`${route.id}.${route.balance}.share`);
    const total = evaluation.outcome(`${route.id}.cost.total`);

    if (!(balance instanceof Failure) || !(total instanceof Failure)) throw new Error('Nothing failed');
    expect(balance.reason.kind).toBe('outside');
    expect(total.at).toBe(balance.at);
    expect(nodeAt(model.graph, balance.at).operation.op).toBe('within');
    expect(evaluation.number(`${route.id}.${others[0]!.id}.stock`)).toBeGreaterThan(0);
  });
});

function has(model: RandomModel['model'], id: string): boolean {
  return model.graph.positions.has(id);
}
