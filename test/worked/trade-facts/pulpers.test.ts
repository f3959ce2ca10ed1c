import { describe, expect, test } from 'vitest';
import type { Stage } from '../../../src/case/case.ts';
import { type OpenCase, type StageBalance, editStructure, lineBalance } from '../../../src/index.ts';
import { workOut } from '../../../src/study/open-case.ts';
import { processCautions } from '../../../src/study/process-cautions.ts';
import { valueOf } from '../../examples/demonstration.ts';
import { smallCase } from '../../support/small-case.ts';

const bales = { 'material.paper.wire': '0.5 %', 'material.paper.lights': '2 %' };

function mill(stages: readonly Stage[], figures: Readonly<Record<string, string>>): OpenCase {
  return valueOf(workOut(smallCase({ stages, figures })));
}

function stageOf(open: OpenCase, id: string): StageBalance {
  const found = lineBalance(open, 'mill', 'line')?.stages.find(({ stage }) => stage === id);
  if (found === undefined) throw new Error(`No stage "${id}"`);
  return found;
}

const left = (balance: StageBalance, component: string): number =>
  balance.leaves.find((each) => each.component === component)?.mass ?? NaN;
const drumCautions = (open: OpenCase) => processCautions(open).filter(({ kind }) => kind === 'unsuited to a drum');

// Common practice, no source: a vat pulper is fed with the wires still round the bales; they wind up into a rope that is pulled out of
// the vat and takes film along.
describe('a vat pulper fed with wires', () => {
  const open = mill([{ id: 'pulp', like: 'vat' }], bales);
  const pulper = stageOf(open, 'pulp');

  test('is what it is made for: nothing is remarked on', () => {
    expect(drumCautions(open)).toEqual([]);
  });

  test('pulls nearly all wire out, and more than half of the film', () => {
    expect(left(pulper, 'wire') / 5).toBeCloseTo(0.97, 12);
    expect(left(pulper, 'lights') / 20).toBeCloseTo(0.55, 12);
  });

  test('carries both away on the rope, with some fibre that hangs on', () => {
    const rope = pulper.streams.find(({ id }) => id === 'rope');

    expect(rope?.label).toBe('Rope tail and bale wire');
    expect(rope?.mass).toBeCloseTo(left(pulper, 'wire') + left(pulper, 'lights') + left(pulper, 'fibre'), 12);
    // 0.2 to 1 % of the fibre hangs on to rope and junk.
    expect(left(pulper, 'fibre') / 975).toBeGreaterThan(0.002);
    expect(left(pulper, 'fibre') / 975).toBeLessThan(0.01);
  });
});

// Common practice, no source: a drum rolls bales apart; wires would wind round it, so they are cut and taken off before.
describe('a drum pulper', () => {
  test('fed with wires is remarked on, and never refused', () => {
    const cautions = drumCautions(mill([{ id: 'pulp', like: 'drum' }], bales));

    expect(cautions).toEqual([
      {
        kind: 'unsuited to a drum',
        about: 'mill.line.pulp.feed',
        where: 'Mill, Line',
        component: 'wire',
        share: expect.closeTo(0.5, 12) as number,
      },
    ]);
  });

  test('is not remarked on where the wires are off before it', () => {
    const dewired = mill(
      [
        { id: 'dewire', like: 'pumps', label: 'Cut and take the wires off' },
        { id: 'pulp', like: 'drum' },
      ],
      { ...bales, 'mill.line.dewire.removal.wire': '95 %' },
    );

    expect(drumCautions(dewired)).toEqual([]);
  });

  test('is remarked on again where the wires are taken off only after it', () => {
    const late = mill(
      [
        { id: 'pulp', like: 'drum' },
        { id: 'dewire', like: 'pumps', label: 'Cut and take the wires off' },
      ],
      { ...bales, 'mill.line.dewire.removal.wire': '95 %' },
    );

    expect(drumCautions(late)).toHaveLength(1);
  });
});

// Common practice, no source: wet-strength paper is shredded by the rotor of a vat and rolls out of a drum whole.
describe('wet-strength paper, a tenth of the feed, when the vat gives way to a drum', () => {
  const vat = mill([{ id: 'pulp', like: 'vat' }], { 'material.paper.wetStrength': '10 %' });
  const swapped = valueOf(
    editStructure(vat, {
      kind: 'set up stage',
      route: 'mill',
      line: 'line',
      stage: 'pulp',
      options: { like: 'drum' },
    }),
  );
  const streamOf = (open: OpenCase, id: string): number =>
    stageOf(open, 'pulp').streams.find((stream) => stream.id === id)?.mass ?? 0;

  test('moves from the stock to the reject: 65.25 kg in 1,000 fed', () => {
    // The vat turns 55 % into fibre and pulls out 25 % of the rest: 11.25 kg leave. The drum turns 10 % and rejects 85 %: 76.5 kg.
    const moved = left(stageOf(swapped, 'pulp'), 'wetStrength') - left(stageOf(vat, 'pulp'), 'wetStrength');

    expect(moved).toBeCloseTo(76.5 - 11.25, 10);
  });

  test('leaves with the coarse rejects, not on the rope', () => {
    expect([streamOf(vat, 'coarse'), streamOf(vat, 'rope') > 0]).toEqual([0, true]);
    expect(streamOf(swapped, 'coarse')).toBeGreaterThan(76);
  });

  test('takes yield from the line, so more paper is bought', () => {
    expect(swapped.values.number('mill.line.yield')).toBeLessThan(vat.values.number('mill.line.yield') - 0.06);
    expect(swapped.values.number('mill.bought.paper')).toBeGreaterThan(vat.values.number('mill.bought.paper') * 1.06);
  });

  test('is remarked on: a drum bears 2 % of it', () => {
    expect(drumCautions(vat)).toEqual([]);
    expect(drumCautions(swapped)).toMatchObject([
      { component: 'wetStrength', share: expect.closeTo(10, 12) as number },
    ]);
  });
});
