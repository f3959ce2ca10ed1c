import type { GivenInput, Stage } from '../../src/case/case.ts';
import { type StageEntry, stageEntries } from '../../src/paper/catalogue.ts';
import { components } from '../../src/paper/components.ts';
import type { Dice } from './dice.ts';

export interface RandomTrain {
  readonly stages: readonly Stage[];
  readonly inputs: Readonly<Record<string, GivenInput>>;
}

/**
 * A train of stages from the whole of the program's list, variants included, in any order, each with random choices of its own and
 * some figures where the list has none. The last stage always rejects some fibre, so that every line has coarse rejects.
 */
export function randomTrain(dice: Dice, lineId: string, most: number): RandomTrain {
  const kinds = Array.from({ length: dice.whole(1, most) }, () => dice.pick([...stageEntries.keys()]));
  const inputs: Record<string, GivenInput> = {};
  const stages = kinds.map((like, at) => {
    const entry = stageEntries.get(like)!;
    const id = `stage${String(at + 1)}`;
    Object.assign(inputs, figuresOf(dice, `${lineId}.${id}`, entry));
    return stageOf(dice, id, like, entry);
  });
  inputs[`${lineId}.last.removal.fibre`] = { value: dice.digits(0.1, 5), unit: '%' };
  return { stages: [...stages, { id: 'last', like: 'pumps' }], inputs };
}

function stageOf(dice: Dice, id: string, like: string, entry: StageEntry): Stage {
  return {
    id,
    like,
    ...(entry.cascade === undefined ? {} : { levels: dice.whole(1, 5) }),
    ...(entry.washer === undefined ? {} : { filtrate: dice.pick(['clarifier', 'dilution', 'effluent']) }),
    ...(entry.kind === 'refiner' ? { power: dice.pick(['gross', 'net and no-load']) } : {}),
    ...(dice.chance(0.2) ? { heat: 'computed' as const } : {}),
  };
}

/** Where the list has no figure: a separation quotient in a cascade, a removal in a stage that separates directly. */
function figuresOf(dice: Dice, place: string, entry: StageEntry): Record<string, GivenInput> {
  if (entry.washer !== undefined) return {};
  // In a cascade fibre is what the others are compared with.
  const open = entry.cascade === undefined ? components : components.filter((component) => component !== 'fibre');
  return Object.fromEntries(
    dice
      .some(open, 0.15)
      .map((component): [string, GivenInput] =>
        entry.cascade === undefined
          ? [`${place}.removal.${component}`, { value: dice.digits(0, 40), unit: '%' }]
          : [`${place}.quotient.${component}`, { value: dice.digits(-1, 0.95), unit: '1' }],
      ),
  );
}
