import { describe, expect, test } from 'vitest';
import { evaluateFloat, floatProgram } from '../../src/kernel/evaluate/float.ts';
import { blockedPlan, laneCount, lanesOf, runBlock, varies } from '../../src/kernel/tape/blocked.ts';
import { compileTape } from '../../src/kernel/tape/compile.ts';
import { runTape } from '../../src/kernel/tape/run.ts';
import { slopesOf } from '../../src/kernel/tape/slopes.ts';
import { type Tape, freshSlots, resultSlot } from '../../src/kernel/tape/tape.ts';
import { largestTerms } from '../support/largest-terms.ts';
import { Dice } from '../support/dice.ts';
import { type RandomModel, randomFigures, randomModel } from '../support/random-figures.ts';

// Each random structure is worked out with two sets of random figures, so that 100 of them make 200 cases. They are built once for all tests.
const seeds = Array.from({ length: 100 }, (_, k) => 41000 + k);
const cases = seeds.flatMap((seed) => {
  const random = randomModel(seed, { lines: 2, stages: 3 });
  return [
    { seed, random },
    { seed: seed + 500, random: { ...random, figures: randomFigures(random.model, seed + 500) } },
  ];
});
const results = ['difference.total', 'difference.footprint.total'];

function tapeOf({ model, figures }: RandomModel): { tape: Tape; values: Float64Array } {
  const tape = compileTape(model.graph, results);
  const values = freshSlots(tape);
  for (const [id, digits] of figures) {
    const place = tape.inputPlaces.get(id)!;
    values[place] = Number(digits) * tape.inputFactors[place]!;
  }
  runTape(tape, values);
  return { tape, values };
}

describe('a tape', () => {
  test('gives what the plain float reading gives, to 1e-12 of the largest term', () => {
    for (const { seed, random } of cases) {
      const { tape, values } = tapeOf(random);
      const plain = evaluateFloat(floatProgram(random.model.graph), random.figures);
      const scales = largestTerms(random.model.graph, plain);
      for (const id of results) {
        const at = random.model.graph.positions.get(id)!;
        const gap = Math.abs(values[resultSlot(tape, id)]! - plain[at]!) / scales[at]!;
        expect(gap, `seed ${String(seed)}: ${id}`).toBeLessThan(1e-12);
      }
    }
  });

  test('gives the same bits in blocks of lanes as one value at a time', () => {
    for (const { seed, random } of cases) {
      const tape = compileTape(random.model.graph, results);
      const slots = results.map((id) => resultSlot(tape, id));
      const dice = new Dice(seed);
      const varied = Array.from({ length: 5 }, () => dice.whole(0, tape.inputIds.length - 1)).filter(
        (place, k, all) => all.indexOf(place) === k && Number.isFinite(tape.inputValues[place]),
      );
      const plan = blockedPlan(tape, varied, slots);
      for (const place of varied) {
        const lanes = lanesOf(plan, place);
        for (let lane = 0; lane < laneCount; lane += 1) lanes[lane] = tape.inputValues[place]! * dice.between(0.9, 1.1);
      }

      runBlock(plan);

      for (const lane of [0, 1, 511, 1023]) {
        const values = freshSlots(tape);
        for (const place of varied) values[place] = lanesOf(plan, place)[lane]!;
        runTape(tape, values);
        for (const slot of slots) {
          const blocked = varies(plan, slot) ? lanesOf(plan, slot)[lane]! : plan.base[slot]!;
          expect(Object.is(blocked, values[slot]), `seed ${String(seed)}, lane ${String(lane)}`).toBe(true);
        }
      }
    }
  });

  test('has slopes that agree with central differences', () => {
    for (const { seed, random } of cases) {
      const { tape, values } = tapeOf(random);
      const slot = resultSlot(tape, 'difference.total');
      const slopes = slopesOf(tape, values, slot);
      const size = Math.abs(values[slot]!) + 1;
      tape.inputIds.forEach((id, place) => {
        const figure = values[place]!;
        const step = Math.max(Math.abs(figure), 1e-3) * 1e-5;
        const at = (value: number): number => {
          const moved = values.slice();
          moved[place] = value;
          runTape(tape, moved);
          return moved[slot]!;
        };
        const difference = (at(figure + step) - at(figure - step)) / (2 * step);
        // At the edge of what is allowed one side is no number, and at a corner both slopes are right.
        if (!Number.isFinite(difference)) return;
        const scale = Math.max(Math.abs(difference), Math.abs(slopes[place]!), (size * 1e-4) / step / 1e5);
        expect(Math.abs(difference - slopes[place]!) / scale, `seed ${String(seed)}: ${id}`).toBeLessThan(2e-3);
      });
    }
  });
});
