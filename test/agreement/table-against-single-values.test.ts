import { describe, expect, test } from 'vitest';
import { runTape } from '../../src/kernel/tape/run.ts';
import { freshSlots, inputPlace } from '../../src/kernel/tape/tape.ts';
import { ResultTape } from '../../src/study/result-tape.ts';
import { twoWay } from '../../src/study/two-way.ts';
import { demonstration } from '../examples/demonstration.ts';
import { Dice } from '../support/dice.ts';

const open = demonstration();
const results = ['difference.total', 'difference.footprint.total', 'virgin.cost.total'];
const pairs = 40;

describe('a table', () => {
  test('has in each cell the bits that single values have, for random pairs of inputs', () => {
    const dice = new Dice(53000);
    const tapes = results.map((id) => ({ id, asked: new ResultTape(open, id) }));
    for (let pair = 0; pair < pairs; pair += 1) {
      const { id, asked } = dice.pick(tapes);
      const { tape, slot } = asked;
      // Inputs that do not reach the result too, and more figures than one block has lanes.
      const [down, across] = [0, 1].map(() => {
        const input = dice.pick(open.model.graph.inputs).id;
        const place = inputPlace(tape, input);
        const figure = (tape.inputValues[place] ?? NaN) / (tape.inputFactors[place] ?? NaN);
        return { id: input, figures: Array.from({ length: 37 }, () => figure * dice.between(0.9, 1.1)) };
      });
      if (down === undefined || across === undefined || down.id === across.id) continue;

      const { cells } = twoWay(open, id, across, down);

      down.figures.forEach((downFigure, row) => {
        across.figures.forEach((acrossFigure, column) => {
          const values = freshSlots(tape);
          for (const [side, figure] of [
            [down, downFigure],
            [across, acrossFigure],
          ] as const) {
            const place = inputPlace(tape, side.id);
            values[place] = figure * tape.inputFactors[place]!;
          }
          runTape(tape, values);
          const where = `${id} over ${down.id} and ${across.id}, row ${row}, column ${column}`;
          expect(Object.is(cells[row]?.[column], values[slot]), where).toBe(true);
        });
      });
    }
  });

  test('of one input twice is refused', () => {
    const side = { id: 'price.electricity', figures: [0.1, 0.2] };
    expect(() => twoWay(open, 'difference.total', side, side)).toThrow('two inputs');
  });
});
