import { describe, expect, test } from 'vitest';
import { stageEntries } from '../../src/paper/catalogue.ts';
import { components } from '../../src/paper/components.ts';
import type { LineResult } from '../../src/paper/line.ts';
import type { RouteModel } from '../../src/paper/route.ts';
import { evaluateFloat, floatProgram } from '../../src/kernel/evaluate/float.ts';
import { type RandomModel, randomModel } from '../support/random-figures.ts';

// Law: what is fed to a line is its stock, its dissolved matter, and what its stages reject; to 1e-9 of the feed, always.
const closeness = 1e-9;
const wanted = 500;

/** Looks values up by id in the fast numbers; what a case does not have is nothing. */
function reader({ model, figures }: RandomModel): (id: string) => number {
  const values = evaluateFloat(floatProgram(model.graph), figures);
  return (id) => {
    const place = model.graph.positions.get(id);
    return place === undefined ? 0 : values[place]!;
  };
}

const cases: readonly RandomModel[] = enoughCases();

function enoughCases(): RandomModel[] {
  const found: RandomModel[] = [];
  for (let seed = 1, lines = 0; lines < wanted; seed += 1) {
    const next = randomModel(seed, { lines: 4, stages: 9 });
    lines += next.model.routes.reduce((sum, route) => sum + route.plant.lines.length, 0);
    found.push(next);
  }
  return found;
}

function leaves(at: (id: string) => number, line: LineResult, what: 'accepts' | 'rejects', stage: string): number {
  return at(`${line.id}.feed`) * components.reduce((sum, each) => sum + at(`${stage}.${what}.${each}`), 0);
}

function rejected(at: (id: string) => number, line: LineResult): number {
  return line.stages.reduce((sum, { id }) => sum + leaves(at, line, 'rejects', id), 0);
}

function dissolvedOut(at: (id: string) => number, line: LineResult): number {
  return at(`${line.id}.feed`) * at(`${line.id}.last.accepts.dissolved`);
}

describe(`${String(wanted)} random lines`, () => {
  test('use every stage of the list', () => {
    const used = new Set(
      cases.flatMap(({ model }) =>
        model.case.routes.flatMap((route) => route.lines.flatMap((line) => line.stages.map((stage) => stage.like))),
      ),
    );

    expect([...stageEntries.keys()].filter((like) => !used.has(like))).toEqual([]);
  });

  test('lose no kilogram: feed is stock, dissolved matter and rejects', () => {
    let checked = 0;
    for (const each of cases) {
      const at = reader(each);
      for (const line of each.model.routes.flatMap((route) => route.plant.lines)) {
        const feed = at(`${line.id}.feed`);
        const found = at(`${line.id}.stock`) + dissolvedOut(at, line) + rejected(at, line);
        expect(feed, `seed ${String(each.seed)}, ${line.id}`).toBeGreaterThan(0);
        expect(Math.abs(found - feed) / feed, `seed ${String(each.seed)}, ${line.id}`).toBeLessThan(closeness);
        expect(Math.abs(at(`${line.id}.closure`)) / feed, `seed ${String(each.seed)}`).toBeLessThan(closeness);
        checked += 1;
      }
    }
    expect(checked).toBeGreaterThanOrEqual(wanted);
  });

  test('turn nothing into something: a stage gives on and rejects what it was fed', () => {
    for (const each of cases) {
      const at = reader(each);
      for (const line of each.model.routes.flatMap((route) => route.plant.lines)) {
        for (const { id } of line.stages) {
          const fed = at(`${line.id}.feed`) * at(`${id}.feed`);
          const out = leaves(at, line, 'accepts', id) + leaves(at, line, 'rejects', id);
          expect(Math.abs(out - fed) / fed, `seed ${String(each.seed)}, ${id}`).toBeLessThan(closeness);
        }
      }
    }
  });
});

// Law: bought fibre and additives are the product, the residues and what goes to the effluent, dry, for the whole route.
test('a whole route loses no kilogram between what it buys and what it makes', () => {
  for (const each of cases) {
    const at = reader(each);
    for (const route of each.model.routes) {
      const { id } = route.plant.route;
      const boughtIn =
        sumOver(route, (line) => at(`${line.id}.feed`)) +
        at(`${id}.machine.wetEndAdditives`) +
        at(`${id}.machine.surfaceAdditives`);
      const product = at('product.dry') * at(`${id}.machine.serviceFactor`);
      const lost =
        at(`${id}.machine.wetEndLossMass`) +
        at(`${id}.machine.brokeRejects`) +
        sumOver(route, (line) => rejected(at, line) + dissolvedOut(at, line));
      expect(Math.abs(product + lost - boughtIn) / boughtIn, `seed ${String(each.seed)}, ${id}`).toBeLessThan(
        closeness,
      );
    }
  }
});

// Law: what stages reject is hauled as residue or goes to the effluent, and in no other way; with it goes the talc that ends there.
test('every reject turns up in a residue stream or in the effluent', () => {
  const ofLines = ['rope', 'junk', 'coarse', 'fine', 'cleaner', 'light', 'deinking', 'wash'];
  for (const each of cases) {
    const at = reader(each);
    for (const route of each.model.routes) {
      const hauled = ofLines.reduce((sum, stream) => sum + at(`${route.plant.route.id}.residue.${stream}.dry`), 0);
      const openStages = new Set(stagesToEffluent(route));
      const toEffluent = sumOver(route, (line) =>
        line.stages.reduce((sum, { id }) => sum + (openStages.has(id) ? leaves(at, line, 'rejects', id) : 0), 0),
      );
      const all = sumOver(route, (line) => rejected(at, line));
      const talc = at(`${route.plant.route.id}.chemical.talc`) / 1000;
      expect(Math.abs(hauled - talc + toEffluent - all) / all, `seed ${String(each.seed)}`).toBeLessThan(closeness);
    }
  }
});

function sumOver(route: RouteModel, of: (line: LineResult) => number): number {
  return route.plant.lines.reduce((sum, line) => sum + of(line), 0);
}

/** Washers and thickeners whose filtrate is let go. */
function stagesToEffluent({ plant: { route } }: RouteModel): string[] {
  return route.lines.flatMap((line) =>
    line.stages
      .filter((stage) => stage.filtrate === 'effluent' && stageEntries.get(stage.like)?.washer !== undefined)
      .map((stage) => `${route.id}.${line.id}.${stage.id}`),
  );
}
