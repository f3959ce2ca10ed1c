import { describe, expect, it } from 'vitest';
import { Decimal } from '../../src/kernel/evaluate/decimal-settings.ts';
import { at, problemsAfter } from './sample-case.ts';

function problemsWith(value: unknown) {
  return problemsAfter((content) => (at(content, 'inputs')['price.heat'] = { value, unit: 'EUR/GJ' }));
}

describe('the digits of a figure', () => {
  it.each([
    '0',
    '16',
    '-72',
    '0.118',
    '-0',
    '-0.0',
    '00012',
    '007.50',
    '8e6',
    '8E6',
    '1e+6',
    '1.5e-3',
    '1e30',
    '1e-30',
    '1e030',
    '9'.repeat(120),
  ])('may be %s', (value) => {
    expect(problemsWith(value)).toEqual([]);
  });

  it.each([
    '',
    ' ',
    ' 1',
    '1 ',
    '1\n',
    '+5',
    '--5',
    '.5',
    '5.',
    '1.2.3',
    '1,5',
    '1 000',
    '1_000',
    '1e',
    '1e1.5',
    '1e31',
    '1e-31',
    '1e400',
    '1e-400',
    '1e999',
    '1e99999999999',
    '0x10',
    '0b1',
    '1n',
    'NaN',
    'Infinity',
    '-Infinity',
    'twelve',
    '12 EUR',
    '12%',
    '١٢',
    '１２',
    '\u221272',
    '9'.repeat(121),
  ])('may not be "%s"', (value) => {
    expect(problemsWith(value)).toEqual([
      {
        kind: 'wrong form',
        path: 'inputs.price.heat.value',
        given: expect.stringContaining('"') as string,
        allowed: expect.stringContaining('a plain number written as text, such as "12.5"') as string,
      },
    ]);
  });

  it.each([
    ['16', 16],
    ['0.1', 0.1],
    ['true', true],
    ['null', null],
    ['["16"]', ['16']],
    ['{"digits":"16"}', { digits: '16' }],
  ])('are text: %s is answered with how to write it', (given, value) => {
    expect(problemsWith(value)).toEqual([
      {
        kind: 'wrong form',
        path: 'inputs.price.heat.value',
        given,
        allowed: expect.stringContaining('a plain number written as text, such as "12.5"') as string,
      },
    ]);
  });

  it.each(['1e30', '1e-30', '-9.99e30', '9'.repeat(120), `0.${'0'.repeat(117)}1`, '00012', '-0'])(
    'that are let through can be carried by both readings: %s',
    (value) => {
      expect(problemsWith(value)).toEqual([]);
      expect(Number.isFinite(Number(value))).toBe(true);
      expect(new Decimal(value).isFinite()).toBe(true);
      expect(Number(value) === 0).toBe(new Decimal(value).isZero());
    },
  );
});

describe('the id of an input', () => {
  it.each(['', ' ', 'price heat', 'price.heat\n', '.hidden', 'päper', '<b>', 'x'.repeat(201), '../etc'])(
    'may not be "%s"',
    (id) => {
      expect(problemsAfter((content) => (at(content, 'inputs')[id] = { value: '1', unit: 't' }))).toMatchObject([
        { kind: 'wrong form', path: `inputs.${id}`, allowed: 'an id of letters, digits, hyphens and dots' },
      ]);
    },
  );

  it('may be one that no model has; the model will say so', () => {
    expect(problemsAfter((content) => (at(content, 'inputs')['toString'] = { value: '1', unit: 't' }))).toEqual([]);
  });
});
