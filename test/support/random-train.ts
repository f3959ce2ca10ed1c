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
    const stage = stageOf(dice, id, like, entry);
    Object.assign(inputs, figuresOf(dice, `${lineId}.${id}`, entry, stage));
    return stage;
  });
  inputs[`${lineId}.last.removal.fibre`] = { value: dice.digits(0.1, 5), unit: '%' };
  if (dice.chance(0.4)) inputs[`${lineId}.last.dose.talc`] = { value: dice.digits(1, 20), unit: 'kg/bdt' };
  return { stages: [...stages, { id: 'last', like: 'pumps' }], inputs };
}

function stageOf(dice: Dice, id: string, like: string, entry: StageEntry): Stage {
  return {
    id,
    like,
    ...(entry.cascade === undefined ? {} : cascadeOf(dice)),
    ...(entry.washer === undefined ? {} : { filtrate: dice.pick(['clarifier', 'dilution', 'effluent']) }),
    ...(entry.kind === 'refiner' ? { power: dice.pick(['gross', 'net and no-load']) } : {}),
    ...(dice.chance(0.2) ? { heat: 'computed' as const, steam: dice.pick(['indirect', 'direct']) } : {}),
  };
}

function cascadeOf(dice: Dice): Pick<Stage, 'levels' | 'forward' | 'law' | 'rejectRateBy'> {
  const levels = dice.whole(1, 5);
  const later = Array.from({ length: levels - 1 }, (_, at) => at + 2);
  return {
    levels,
    forward: dice.some(later, 0.3),
    law: dice.chance(0.2) ? 'plug flow' : 'quotient',
    rejectRateBy: dice.pick(['mass', 'volume']),
  };
}

/** Where the list has no figure: a quotient or a share in a cascade, a removal in a stage that separates directly. */
function figuresOf(dice: Dice, place: string, entry: StageEntry, stage: Stage): Record<string, GivenInput> {
  if (entry.washer !== undefined) return {};
  // In a cascade fibre is what the others are compared with.
  const open = entry.cascade === undefined ? components : components.filter((component) => component !== 'fibre');
  return Object.fromEntries(
    dice.some(open, 0.15).map((component): [string, GivenInput] => {
      if (entry.cascade === undefined)
        return [`${place}.removal.${component}`, { value: dice.digits(0, 40), unit: '%' }];
      return stage.law === 'plug flow' || dice.chance(0.3)
        ? [`${place}.efficiency.${component}`, { value: dice.digits(1, 95), unit: '%' }]
        : [`${place}.quotient.${component}`, { value: dice.digits(-1, 0.95), unit: '1' }];
    }),
  );
}
