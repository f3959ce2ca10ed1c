import { describe, expect, test } from 'vitest';
import type { Stage } from '../../../src/case/case.ts';
import { writeCase } from '../../../src/case/write-case.ts';
import { editStructure } from '../../../src/study/edit-structure.ts';
import { type OpenCase, changeInput, openCase } from '../../../src/study/open-case.ts';
import { cautionsOf } from '../../../src/study/warnings.ts';
import { cautionSentence } from '../../../src/wording/caution-sentence.ts';
import { problemSentence } from '../../../src/wording/problem-sentence.ts';
import { evaluated } from '../../support/evaluation.ts';
import { twoLineCase } from './two-line-case.ts';

const tensile = {
  'product.strength.tensile': '42 N*m/g',
  'mill.one.strength.tensile': '50 N*m/g',
  'mill.two.strength.tensile': '30 N*m/g',
};

// All worked by hand. Shares of the dry fresh stock 60 and 40 %: I = 0.6 x 50 + 0.4 x 30 = 42.
describe('strength to grammage', () => {
  test('asks for no more tonnes where the furnish has the index of the reference', () => {
    const mill = evaluated(twoLineCase('60 %', tensile));

    expect(mill.number('mill.quality.tensile')).toBeCloseTo(42, 12);
    expect(mill.number('mill.quality.serviceFactor')).toBeCloseTo(1, 12);
  });

  test('asks for a fifth more tonnes where the index is 35 against 42', () => {
    // 0.25 x 50 + 0.75 x 30 = 35; 42/35 = 1.2.
    const mill = evaluated(twoLineCase('25 %', tensile));

    expect(mill.number('mill.quality.tensile.factor')).toBeCloseTo(1.2, 12);
  });

  test('counts starch: 8 kg a gross tonne at 0.875 N m/g each bring 35 to 42', () => {
    const starch = { 'product.strength.tensile.perStarch': '0.875 N*m*gt/g/kg', 'mill.quality.starch': '8 kg/gt' };
    const mill = evaluated(twoLineCase('25 %', { ...tensile, ...starch }));

    expect(mill.number('mill.quality.tensile')).toBeCloseTo(42, 12);
  });

  test('takes the cube root for bending: an eighth of the stiffness asks for twice the grammage', () => {
    const mill = evaluated(
      twoLineCase('50 %', {
        'product.strength.bending': '0.8 N*m^7/kg^3',
        'mill.one.strength.bending': '0.1 N*m^7/kg^3',
        'mill.two.strength.bending': '0.1 N*m^7/kg^3',
      }),
    );

    expect(mill.number('mill.quality.bending.factor')).toBeCloseTo(2, 12);
  });

  test('proposes what the neediest property asks for', () => {
    const burst = {
      'product.strength.burst': '3 kPa*m^2/g',
      'mill.one.strength.burst': '2 kPa*m^2/g',
      'mill.two.strength.burst': '2 kPa*m^2/g',
    };
    // Tensile asks for 1.2, burst for 3/2.
    const mill = evaluated(twoLineCase('25 %', { ...tensile, ...burst }));

    expect(mill.number('mill.quality.serviceFactor')).toBeCloseTo(1.5, 12);
  });

  test('is not there where no line has an index', () => {
    expect(evaluated(twoLineCase('25 %', {})).model.graph.positions.has('mill.quality.serviceFactor')).toBe(false);
  });

  test('asks for the index of every other line, and for that of the reference', () => {
    const open = opened(twoLineCase('25 %', { 'mill.one.strength.tensile': '50 N*m/g' }));

    expect(open.gaps.map((gap) => ('id' in gap ? gap.id : ''))).toEqual([
      'mill.two.strength.tensile',
      'product.strength.tensile',
    ]);
  });
});

describe('refining', () => {
  const refiner: Stage = { id: 'refine', like: 'refiner-sw', power: 'net and no-load' };
  const energy = {
    'product.strength.tensile.perRefining': '0.1 N*m*bdt/g/kWh',
    'mill.one.refine.net': '100 kWh/bdt',
    'mill.one.refine.noLoad': '0 kW',
    'mill.two.refine.net': '40 kWh/bdt',
    'mill.two.refine.noLoad': '0 kW',
  };

  test('counts by net energy a tonne of stock: 0.25 x 100 + 0.75 x 40 = 55 kWh add 5.5 N m/g', () => {
    const mill = evaluated(twoLineCase('25 %', { ...tensile, ...energy }, { stages: [refiner] }));

    expect(mill.number('mill.quality.refiningEnergy')).toBeCloseTo(55, 9);
    expect(mill.number('mill.quality.tensile')).toBeCloseTo(40.5, 9);
  });

  test('adds nothing where only the whole draw of refiners is known, and that is said', () => {
    const figures = { ...tensile, 'product.strength.tensile.perRefining': '0.1 N*m*bdt/g/kWh' };
    const open = opened(twoLineCase('25 %', figures, { stages: [{ id: 'refine', like: refiner.like }] }));

    expect(open.values.number('mill.quality.tensile')).toBeCloseTo(35, 12);
    expect(sentences(open).filter((each) => each.includes('adds nothing to strength'))).toHaveLength(2);
  });
});

describe('the proposed factor', () => {
  test('leaves the tonnes alone while it is only shown', () => {
    const open = opened(twoLineCase('25 %', tensile));

    expect(open.values.number('mill.machine.serviceFactor')).toBe(1);
    expect(open.values.number('mill.machine.stock')).toBe(1);
  });

  test('makes a fifth more of everything once it is used', () => {
    const open = used(opened(twoLineCase('25 %', tensile)));

    expect(open.values.number('mill.machine.serviceFactor')).toBeCloseTo(1.2, 12);
    expect(open.values.number('mill.machine.stock')).toBeCloseTo(1.2, 12);
    expect(sentences(open)).toContain(
      'Mill makes 1.2 t for each reference tonne; every figure is per reference tonne.',
    );
  });

  test('sets a figure of somebody aside, says so, and gives it back when it is no longer used', () => {
    const given = opened(twoLineCase('25 %', { ...tensile, 'mill.machine.serviceFactor': '1.05 1' }));
    const open = used(given);

    expect(open.values.number('mill.machine.serviceFactor')).toBeCloseTo(1.2, 12);
    expect(sentences(open)).toContain(
      'Tonnes for the same service (Mill, machine) is worked out while the case says so; the figure given for it, 1.05, stands aside.',
    );
    const back = editStructure(open, { kind: 'set service', route: 'mill', service: 'as given' });
    expect(back.ok && writeCase(back.value.content)).toBe(writeCase(given.content));
    expect(back.ok && back.value.values.number('mill.machine.serviceFactor')).toBe(1.05);
  });

  test('takes no other figure while it is used', () => {
    const refused = changeInput(used(opened(twoLineCase('25 %', tensile))), 'mill.machine.serviceFactor', '1.1');

    expect(refused.ok ? [] : refused.problems.map(problemSentence)).toEqual([
      '"mill.machine.serviceFactor" is worked out in this case, from price tiers or from strength, and takes no figure, range or spread of its own.',
    ]);
  });

  test('cannot be used before an index is given', () => {
    const refused = editStructure(opened(twoLineCase('25 %', {})), {
      kind: 'set service',
      route: 'mill',
      service: 'from strength',
    });

    expect(refused.ok ? [] : refused.problems.map(problemSentence)).toEqual([
      '"an index of strength of the lines of Mill, such as mill.one.strength.tensile" is missing.',
    ]);
  });
});

function opened(content: Parameters<typeof writeCase>[0]): OpenCase {
  const open = openCase(writeCase(content));
  if (!open.ok) throw new Error(open.problems.map(problemSentence).join('\n'));
  return open.value;
}

function used(open: OpenCase): OpenCase {
  const edited = editStructure(open, { kind: 'set service', route: 'mill', service: 'from strength' });
  if (!edited.ok) throw new Error(edited.problems.map(problemSentence).join('\n'));
  return edited.value;
}

const sentences = (open: OpenCase): readonly string[] => cautionsOf(open).map(cautionSentence);
