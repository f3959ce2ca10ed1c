import { describe, expect, it } from 'vitest';
import { Quantity, constant, isConstant, total } from '../../src/kernel/expression/quantity.ts';
import { UnitMismatch } from '../../src/kernel/units/unit-mismatch.ts';
import { dimensionless, parseUnit } from '../../src/kernel/units/unit.ts';

function input(id: string, unit: string): Quantity {
  return new Quantity({ op: 'input', args: [], key: id }, parseUnit(unit), { id, label: id });
}

const electricity = input('electricity', 'kWh');
const steam = input('steam', 'GJ');
const dryPrice = input('price', 'EUR/adt');
const dryMass = input('mass', 'bdt');
const airDry = input('bales', 'adt');

describe('units of quantities', () => {
  it.each([
    ['adding', () => electricity.plus(steam)],
    ['subtracting', () => electricity.minus(steam)],
    ['comparing', () => electricity.lesserOf(steam)],
    ['comparing', () => electricity.greaterOf(steam)],
    ['comparing', () => electricity.whenAbove(steam, electricity, electricity)],
  ])('are compared when %s, and a mismatch names both sides with their units', (doing, calculate) => {
    expect(calculate).toThrow(UnitMismatch);
    expect(calculate).toThrow(`${doing} electricity (kWh) and steam (GJ)`);
  });

  it('keep bone-dry and air-dry tonnes apart', () => {
    expect(() => dryMass.plus(airDry)).toThrow('adding mass (bdt) and bales (adt)');
  });

  it('show a price for air-dry tonnes that is charged on bone-dry ones', () => {
    const charged = dryPrice.times(dryMass);

    expect(charged.unit.text).toBe('EUR*bdt/adt');
    expect(() => total([charged, input('freight', 'EUR')], 'EUR')).toThrow(
      'adding an unnamed multiply (EUR*bdt/adt) and freight (EUR)',
    );
  });

  it('must be equal in both results of a choice', () => {
    expect(() => electricity.whenAbove(constant('0', 'kWh'), steam, dryMass)).toThrow(
      'choosing between steam (GJ) and mass (bdt)',
    );
  });

  it('must be those of the sum, also where the sum has no other term', () => {
    expect(() => total([steam], 'kWh')).toThrow('adding steam (GJ) and a sum (kWh)');
  });

  it('do not stand under a power', () => {
    expect(() => electricity.toThePower(constant('2'))).toThrow('a power needs plain numbers');
    expect(() => constant('2').toThePower(electricity)).toThrow('a power needs plain numbers');
  });

  it('are checked before a term that is nothing is dropped', () => {
    expect(() => electricity.plus(constant('0', 'GJ'))).toThrow(UnitMismatch);
    expect(() => electricity.minus(constant('0', 'GJ'))).toThrow(UnitMismatch);
    expect(() => total([constant('0', 'GJ')], 'kWh')).toThrow(UnitMismatch);
  });
});

describe('terms that are known to be nothing', () => {
  it('vanish from sums and differences', () => {
    const nothing = constant('0', 'kWh');

    expect(electricity.plus(nothing)).toBe(electricity);
    expect(nothing.plus(electricity)).toBe(electricity);
    expect(electricity.minus(nothing)).toBe(electricity);
  });

  it('make a product nothing of the unit of the product', () => {
    const product = electricity.times(constant('0', 'EUR/kWh'));

    expect(isConstant(product, '0')).toBe(true);
    expect(product.unit.text).toBe('EUR');
    expect(constant('0', 'EUR/kWh').times(electricity).unit.text).toBe('EUR');
  });

  it('make a quotient nothing of the unit of the quotient', () => {
    const quotient = constant('0', 'EUR').dividedBy(dryMass);

    expect(isConstant(quotient, '0')).toBe(true);
    expect(quotient.unit.text).toBe('EUR/bdt');
  });

  it('leave an empty sum that is a zero of something', () => {
    const sum = total([], 'EUR/t');

    expect(isConstant(sum, '0')).toBe(true);
    expect(sum.unit.text).toBe('EUR/t');
  });

  it('leave a sum of one term as that term, and a longer one as one sum', () => {
    const nothing = constant('0', 'kWh');

    expect(total([nothing, electricity, nothing], 'kWh')).toBe(electricity);
    expect(total([electricity, nothing, electricity], 'kWh').operation).toEqual({
      op: 'sum',
      args: [electricity, electricity],
    });
  });

  it('do not hide a division by nothing', () => {
    expect(electricity.dividedBy(constant('0')).operation.op).toBe('divide');
  });
});

describe('a factor of one', () => {
  it('vanishes when it is a plain number', () => {
    expect(electricity.times(constant('1'))).toBe(electricity);
    expect(constant('1').times(electricity)).toBe(electricity);
    expect(electricity.dividedBy(constant('1'))).toBe(electricity);
  });

  it('stays when it brings a unit', () => {
    const perTonne = electricity.times(constant('1', '1/t'));

    expect(perTonne.operation.op).toBe('multiply');
    expect(perTonne.unit.text).toBe('kWh/t');
    expect(electricity.dividedBy(constant('1', 't')).unit.text).toBe('kWh/t');
  });
});

describe('a quantity', () => {
  it('is complemented to one in its own unit', () => {
    const yieldOfLine = input('yield', '1');

    expect(yieldOfLine.complement().operation).toMatchObject({
      op: 'subtract',
      args: [{ operation: { digits: '1' } }, yieldOfLine],
    });
    expect(yieldOfLine.complement().unit).toBe(dimensionless);
  });

  it('takes a name without a further step, and another name with one', () => {
    const sum = electricity.plus(electricity);
    const first = sum.named({ id: 'first', label: 'First' });
    const second = first.named({ id: 'second', label: 'Second' });

    expect(first.operation).toBe(sum.operation);
    expect(sum.declaration).toBeNull();
    expect(second.operation).toEqual({ op: 'same', args: [first] });
    expect(second.unit).toBe(first.unit);
  });

  it('may be unbounded nowhere but where a constant keeps the bounds', () => {
    const half = constant('0.5');
    const many = constant('1.5');

    expect(half.within({ least: '0', most: '1' })).toBe(half);
    expect(many.within({ least: '0', most: '1' }).operation.op).toBe('within');
    expect(constant('0').within({ above: '0' }).operation.op).toBe('within');
    expect(electricity.within({ least: '0' }).operation).toEqual({
      op: 'within',
      args: [electricity],
      bounds: { least: '0' },
    });
  });
});
