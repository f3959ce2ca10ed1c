import { describe, expect, it } from 'vitest';
import { type OpenCase, breakEven, changeInput, restoreDefault, sensitivity } from '../../src/index.ts';
import { type Caution, cautionsOf } from '../../src/study/warnings.ts';
import { demonstration, valueOf } from '../examples/demonstration.ts';

const whole = demonstration();
const withFigures = (figures: Readonly<Record<string, string>>): OpenCase =>
  Object.entries(figures).reduce((open, [id, typed]) => valueOf(changeInput(open, id, typed)), whole);
const kinds = (open: OpenCase): readonly Caution['kind'][] => cautionsOf(open).map(({ kind }) => kind);

describe('a machine effect that nobody entered', () => {
  it('is told where the recovered shares differ by more than ten points', () => {
    // 30 % supermarket corrugated and 24 % mixed papers against none.
    expect(cautionsOf(whole)).toContainEqual({
      kind: 'no machine effect',
      about: 'recovered.machine.speed',
      base: { route: 'Virgin middle ply', share: 0 },
      with: { route: 'Recovered middle ply', share: expect.closeTo(54, 9) as number },
    });
  });

  it('is not told where they hardly differ, nor once somebody says that there is none', () => {
    const alike = withFigures({ 'recovered.supermarket.share': '5', 'recovered.mixed.share': '4' });

    expect(kinds(alike)).not.toContain('no machine effect');
    expect(kinds(withFigures({ 'recovered.machine.speed': '100' }))).not.toContain('no machine effect');
  });
});

describe('a machine effect without money', () => {
  it('is told while nothing says what an hour costs, and while orders limit the machine', () => {
    const slow = { 'recovered.machine.speed': '99', 'product.price': '890' };

    expect(kinds(withFigures(slow))).toContain('hours without a cost');
    expect(kinds(withFigures({ ...slow, 'machine.extraHour': '400' }))).not.toContain('hours without a cost');
    expect(kinds(withFigures({ ...slow, 'machine.soldOut': '1' }))).not.toContain('hours without a cost');
  });

  it('is told of second quality that sells for no less', () => {
    const worse = { 'recovered.machine.seconds': '3' };

    expect(kinds(withFigures(worse))).toContain('seconds without an allowance');
    expect(kinds(withFigures({ ...worse, 'machine.secondsAllowance': '120' }))).not.toContain(
      'seconds without an allowance',
    );
  });

  it('is told where a price makes a contribution idle', () => {
    const both = withFigures({ 'product.price': '890', 'product.contribution': '200' });

    expect(kinds(both)).toContain('price and contribution');
    expect(kinds(valueOf(restoreDefault(both, 'product.price')))).not.toContain('price and contribution');
  });
});

describe('the price of the product', () => {
  const slow = { 'machine.soldOut': '1', 'recovered.machine.speed': '99' };

  it('is missing only once a machine that is sold out loses tonnes', () => {
    expect(withFigures({ 'machine.soldOut': '1' }).gaps).toEqual([]);
    expect(withFigures({ 'recovered.machine.speed': '99' }).gaps).toEqual([]);
    expect(withFigures(slow).gaps).toMatchObject([{ kind: 'no figure', id: 'product.price' }]);
    expect(withFigures({ ...slow, 'product.price': '890' }).gaps).toEqual([]);
    expect(withFigures({ ...slow, 'product.contribution': '200' }).gaps).toEqual([]);
  });
});

describe('hours that the year does not have', () => {
  it('are told where orders limit the machine, and no business of one that is sold out', () => {
    const tooSlow = { 'recovered.machine.speed': '80', 'product.price': '890', 'machine.extraHour': '400' };
    const told = (open: OpenCase) => cautionsOf(open).filter(({ kind }) => kind === 'cannot be worked out');

    expect(told(withFigures(tooSlow))).toMatchObject([{ about: 'recovered.machineEffect.hoursLeft' }]);
    expect(told(withFigures({ ...tooSlow, 'machine.soldOut': '1' }))).toEqual([]);
  });
});

describe('the switch of what limits the machine', () => {
  const open = withFigures({ 'machine.soldOut': '1', 'recovered.machine.speed': '99', 'product.price': '890' });

  it('is 0 or 1', () => {
    expect(changeInput(whole, 'machine.soldOut', '0.5')).toMatchObject({
      ok: false,
      problems: [{ kind: 'wrong form', given: '0.5' }],
    });
  });

  it('is never swung, and has no break-even', () => {
    const { judged, conventional } = sensitivity(open, 'difference.total');

    expect([...judged, ...conventional].map(({ id }) => id)).not.toContain('machine.soldOut');
    expect(conventional.map(({ id }) => id)).toContain('recovered.machine.speed');
    expect(breakEven(open, 'difference.total', 'machine.soldOut')).toBeNull();
  });

  it('has a break-even speed at which nothing is left', () => {
    const turns = breakEven(open, 'difference.total', 'recovered.machine.speed')?.crossings[0] ?? NaN;
    const there = valueOf(changeInput(open, 'recovered.machine.speed', String(turns)));

    expect(turns).toBeLessThan(99);
    expect(there.values.number('difference.total')).toBeCloseTo(0, 8);
  });
});
