import { describe, expect, it } from 'vitest';
import { caseText, changeInput, openCase, restoreDefault } from '../../src/index.ts';
import { demonstration, problemsOf, valueOf } from '../examples/demonstration.ts';

const given = demonstration();
const figure = (open: typeof given, id: string) => open.model.graph.inputs.find((input) => input.id === id);

describe('changing an input', () => {
  it('takes a figure without a unit in the unit of the input', () => {
    const open = valueOf(changeInput(given, 'price.electricity', '0.2'));

    expect(open.values.exact('price.electricity')).toBe('0.2');
    expect(open.content.inputs['price.electricity']).toEqual({ value: '0.2', unit: 'EUR/kWh' });
  });

  it.each([
    // 1 MWh is 1000 kWh; 1 short ton is 0.90718474 t; a share is kept in per cent and reckoned as a fraction.
    { id: 'price.electricity', typed: '120 EUR/MWh', kept: '0.12', unit: 'EUR/kWh', reckoned: '0.12' },
    { id: 'product.tonnes', typed: '100000 st/a', kept: '90718.474', unit: 't/a', reckoned: '90718.474' },
    { id: 'recovered.mixed.share', typed: '25 %', kept: '25', unit: '%', reckoned: '0.25' },
    { id: 'recovered.mixed.share', typed: '0.25 1', kept: '25', unit: '%', reckoned: '0.25' },
    { id: 'recovered.priceDifference', typed: '−70 €/t', kept: '-70', unit: 'EUR/t', reckoned: '-70' },
    { id: 'recovered.labour', typed: '+1.7e6', kept: '1700000', unit: 'EUR/a', reckoned: '1700000' },
    { id: 'price.electricity', typed: '0.12000', kept: '0.12000', unit: 'EUR/kWh', reckoned: '0.12' },
  ])('keeps "$typed" for $id as $kept $unit', ({ id, typed, kept, unit, reckoned }) => {
    const open = valueOf(changeInput(given, id, typed));

    expect(open.content.inputs[id]).toEqual({ value: kept, unit });
    expect(open.values.exact(id)).toBe(reckoned);
    expect(valueOf(openCase(caseText(open))).content).toEqual(open.content);
  });

  it('keeps what was told about the figure, and forgets it with the next figure', () => {
    const told = valueOf(changeInput(given, 'price.water', '0.5', { status: 'measured', source: 'Meter of May' }));
    expect(told.content.inputs['price.water']).toEqual({
      value: '0.5',
      unit: 'EUR/m3',
      status: 'measured',
      source: 'Meter of May',
    });
    expect(figure(told, 'price.water')?.given?.provenance).toEqual({ status: 'measured', source: 'Meter of May' });

    const untold = valueOf(changeInput(told, 'price.water', '0.6'));
    expect(figure(untold, 'price.water')?.given?.provenance.source).toBe('Given without a source');
  });

  it('leaves the case it was given as it was', () => {
    const before = caseText(given);
    valueOf(changeInput(given, 'price.electricity', '9'));

    expect(caseText(given)).toBe(before);
    expect(given.values.exact('price.electricity')).toBe('0.118');
  });

  it('puts the default back when the figure is taken away', () => {
    const open = valueOf(restoreDefault(given, 'price.electricity'));

    expect(figure(open, 'price.electricity')?.given).toBeNull();
    expect(open.values.exact('price.electricity')).toBe(figure(open, 'price.electricity')?.usual.value);
    expect(open.content.inputs).not.toHaveProperty('price.electricity');
    const again = valueOf(changeInput(open, 'price.electricity', '0.118'));
    expect(again.values.exact('recovered.cost.total')).toBe(given.values.exact('recovered.cost.total'));
  });

  it('leaves a gap when the figure that is taken away has no default', () => {
    const open = valueOf(restoreDefault(given, 'product.tonnes'));

    expect(open.gaps).toEqual([
      { kind: 'no figure', id: 'product.tonnes', label: 'Saleable tonnes a year', unit: 't/a' },
    ]);
  });
});

describe('a figure that cannot be', () => {
  it.each(['', '  ', 'EUR/kWh', 'twelve', '0,12', '1.2.3', '--5', '.5'])('"%s" is no number', (typed) => {
    expect(problemsOf(changeInput(given, 'price.electricity', typed))).toEqual([
      { kind: 'not a number', id: 'price.electricity', given: typed },
    ]);
  });

  it('names the unit that was written and the one that is wanted', () => {
    expect(problemsOf(changeInput(given, 'price.electricity', '0.12 EUR/GJ'))).toEqual([
      { kind: 'wrong unit', id: 'price.electricity', label: 'Electricity', given: 'EUR/GJ', wanted: 'EUR/kWh' },
    ]);
    expect(problemsOf(changeInput(given, 'material.mixed.price', '100 EUR/bdt'))).toMatchObject([
      { kind: 'wrong unit', given: 'EUR/bdt', wanted: 'EUR/t-ar' },
    ]);
  });

  it('asks which ton is meant', () => {
    expect(problemsOf(changeInput(given, 'product.tonnes', '100000 tons/a'))).toEqual([
      { kind: 'which ton', id: 'product.tonnes', given: 'tons/a' },
    ]);
  });

  it('tells what is possible', () => {
    expect(problemsOf(changeInput(given, 'recovered.mixed.share', '104'))).toMatchObject([
      { kind: 'outside', id: 'recovered.mixed.share', given: '104', unit: '%', allowed: { least: '0', most: '100' } },
    ]);
    // Told once, although two equations ask for the share.
    expect(problemsOf(changeInput(given, 'recovered.mixed.share', '104'))).toHaveLength(1);
    expect(changeInput(given, 'product.tonnes', '0').ok).toBe(false);
    expect(changeInput(given, 'recovered.mixed.share', '0').ok).toBe(true);
  });

  it('of an input that there is not is refused with names that are near', () => {
    const [problem] = problemsOf(changeInput(given, 'price.electricty', '0.12'));

    expect(problem).toMatchObject({ kind: 'unknown input', id: 'price.electricty' });
    expect(problem.kind === 'unknown input' ? problem.near[0] : '').toBe('price.electricity');
    expect(problemsOf(changeInput(given, 'zzz', '1'))).toEqual([{ kind: 'unknown input', id: 'zzz', near: [] }]);
  });

  it.each(['1e41', '1e-41', '1e5000', `0.${'1'.repeat(120)}`])('"%s" is more than a case file holds', (typed) => {
    expect(problemsOf(changeInput(given, 'price.electricity', typed))).toMatchObject([
      { kind: 'wrong form', path: 'price.electricity', given: typed },
    ]);
  });

  it('is one that a quantity has which is worked out', () => {
    expect(problemsOf(changeInput(given, 'recovered.bctmp.share', '10'))).toMatchObject([{ kind: 'unknown input' }]);
  });
});
