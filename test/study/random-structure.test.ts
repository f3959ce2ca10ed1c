import { describe, expect, it } from 'vitest';
import {
  type Edit,
  type OpenCase,
  caseText,
  editStructure,
  materialChoices,
  openCase,
  stageChoices,
  startCase,
} from '../../src/index.ts';
import { checksOf } from '../../src/study/checks.ts';
import { valueOf } from '../examples/demonstration.ts';
import { Dice } from '../support/dice.ts';

const start = valueOf(
  startCase({
    title: 'To be changed at random',
    virgin: 'board-middle-virgin',
    recovered: 'board-middle',
    tonnesPerYear: '100000',
    currency: 'EUR',
    priceYear: '2024',
  }),
);

/** Any edit there is, of something that the case holds, or now and then of something it does not. */
function randomEdit(dice: Dice, { content }: OpenCase): Edit {
  const orUnknown = (id: string): string => (dice.chance(0.1) ? dice.pick(['nowhere', '', 'constructor']) : id);
  const found = dice.pick(content.routes);
  const foundLine = dice.pick(found.lines);
  const foundStage = dice.pick(foundLine.stages);
  const route = orUnknown(found.id);
  const line = orUnknown(foundLine.id);
  const stage = orUnknown(foundStage.id);
  const like = orUnknown(dice.pick(stageChoices()).like);
  const material = orUnknown(dice.pick(materialChoices()).id);
  const to = dice.whole(-2, 12);
  const levels = dice.pick([1, 3, 5, null]);
  const options = dice.pick<Extract<Edit, { kind: 'set up stage' }>['options']>([
    { levels },
    { like: dice.pick(stageChoices()).like },
    { law: 'plug flow' },
    { law: null, forward: [2, 4] },
    { heat: 'computed', steam: 'direct' },
    { filtrate: 'effluent', label: 'Another name' },
  ]);
  const other = orUnknown(dice.pick(content.routes).id);
  return dice.pick<Edit>([
    { kind: 'add stage', route, line, like, at: to },
    { kind: 'remove stage', route, line, stage },
    { kind: 'duplicate stage', route, line, stage },
    { kind: 'move stage', route, line, stage, to },
    { kind: 'set up stage', route, line, stage, options },
    { kind: 'add line', route, material },
    { kind: 'remove line', route, line },
    { kind: 'duplicate line', route, line },
    { kind: 'move line', route, line, to },
    { kind: 'balance by line', route, line },
    { kind: 'add grade', route, line, material },
    { kind: 'remove grade', route, line, material: orUnknown(foundLine.recipe[0]?.material ?? '') },
    { kind: 'duplicate route', route },
    { kind: 'remove route', route },
    { kind: 'rename route', route, label: dice.pick(['', 'Another', 'x'.repeat(250)]) },
    { kind: 'move route', route, to },
    { kind: 'compare routes', base: route, with: other },
    { kind: 'set basis', basis: { gwp: dice.pick(['AR4', 'AR6', null]), grid: orUnknown('FRA') } },
  ]);
}

// Law: whatever is done to the structure, a case stays a case. Nothing is thrown; what is refused leaves the case as it was.
describe('thirty random edits each of four cases', () => {
  it.each(Array.from({ length: 4 }, (_, at) => ({ seed: 13_001 + at })))(
    'leave a case that can be read, keeps its laws and can be undone (seed $seed)',
    ({ seed }) => {
      const dice = new Dice(seed);
      let open = start;
      let refused = 0;
      const kinds = new Set<string>();
      for (let step = 0; step < 30; step += 1) {
        const edit = randomEdit(dice, open);
        const message = `seed ${String(seed)}, step ${String(step)}: ${JSON.stringify(edit)}`;
        const before = caseText(open);

        const outcome = editStructure(open, edit);

        kinds.add(edit.kind);
        expect(caseText(open), message).toBe(before);
        if (!outcome.ok) {
          refused += 1;
          continue;
        }
        // Small cases stay quick: a case that has grown large starts anew.
        open = outcome.value.content.routes.length > 3 ? start : outcome.value;
        const { routes, compare } = open.content;
        expect(routes.length, message).toBeGreaterThanOrEqual(2);
        expect(compare.base, message).not.toBe(compare.with);
        for (const { lines, balance } of routes) {
          expect(
            lines.map(({ id }) => id),
            message,
          ).toContain(balance);
          expect(
            lines.every(({ stages, recipe }) => stages.length > 0 && recipe.length > 0),
            message,
          ).toBe(true);
        }
      }
      const again = valueOf(openCase(caseText(open)));

      expect(caseText(again), `seed ${String(seed)}`).toBe(caseText(open));
      expect(again.content, `seed ${String(seed)}`).toEqual(open.content);
      expect(open.gaps, `seed ${String(seed)}`).toEqual([]);
      expect(
        checksOf(open).filter(({ kept }) => !kept),
        `seed ${String(seed)}`,
      ).toEqual([]);
      expect(kinds.size, `seed ${String(seed)}`).toBeGreaterThan(9);
      expect(refused, `seed ${String(seed)}`).toBeLessThan(15);
    },
  );
});
