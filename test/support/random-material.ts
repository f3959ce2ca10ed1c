import type { GivenInput, Material } from '../../src/case/case.ts';
import { materialEntries } from '../../src/paper/catalogue.ts';
import { components } from '../../src/paper/components.ts';
import type { Dice } from './dice.ts';

/** A grade of the program's list, or one of the user's own with a random composition. */
export function randomMaterial(dice: Dice, id: string): { material: Material; inputs: Record<string, GivenInput> } {
  const like = dice.chance(0.5) ? dice.pick([...materialEntries.keys()]) : undefined;
  const material: Material = {
    id,
    label: `Material ${id}`,
    ...(like === undefined ? {} : { like }),
    origin: dice.pick(['virgin', 'pre-consumer', 'post-consumer', 'own broke']),
    price: {
      basis: dice.pick(['as received', 'air-dry', 'bone-dry']),
      kind: dice.pick(['list', 'net', 'contract', 'index']),
      ...(dice.chance(0.2) ? { currency: 'USD' } : {}),
    },
    settlement: dice.pick(['as weighed', 'dry basis', 'point for point']),
  };
  return { material, inputs: like === undefined ? compositionOf(dice, id) : {} };
}

/** Some of everything but fibre, at most nine tenths of the whole; fibre is what is left. */
function compositionOf(dice: Dice, id: string): Record<string, GivenInput> {
  const present = dice.some(
    components.filter((component) => component !== 'fibre'),
    0.7,
  );
  const weights = present.map(() => dice.between(0.001, 1) ** 3);
  const scale = dice.between(5, 90) / weights.reduce((sum, weight) => sum + weight, 0.001);
  return Object.fromEntries(
    present.map((component, at): [string, GivenInput] => {
      const share = ((weights[at] ?? 0) * scale).toFixed(6);
      return [`material.${id}.${component}`, { value: share, unit: '%' }];
    }),
  );
}
