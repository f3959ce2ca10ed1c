import { describe, expect, it } from 'vitest';
import type { Case, GivenInput } from '../../src/case/case.ts';
import { nodeNamed } from '../../src/kernel/graph/graph.ts';
import type { Figure } from '../../src/paper/figure.ts';
import { type InputSpec, Sheet, fraction, notNegative, positive } from '../../src/paper/sheet.ts';
import { caseIn, sampleText } from '../case/sample-case.ts';
import { decimalAt } from '../kernel/small-graph.ts';

function sheetWith(inputs: Readonly<Record<string, GivenInput>>, changes: Partial<Case> = {}): Sheet {
  return new Sheet({ ...caseIn(sampleText), inputs, ...changes });
}

function figure(value: string, unit: string): Figure {
  return { value, low: value, high: value, unit, source: 'practice', status: 'practice' };
}

const price: InputSpec = { id: 'price.x', label: 'Price of x', unit: 'EUR/t', allowed: notNegative };

/** The declaration that comes of one input asked for on a sheet. */
function declared(sheet: Sheet, spec: InputSpec) {
  sheet.input(spec);
  return sheet.graph.build().inputs[0];
}

describe('an input on the sheet', () => {
  it('has the default of the program in force, with where it comes from', () => {
    const input = declared(sheetWith({}), { ...price, figure: figure('5', 'EUR/t') });

    expect(input).toMatchObject({ given: null, usual: { value: '5', provenance: { status: 'practice' } } });
    expect(input?.usual.provenance.source).toBe('Common practice, no source');
  });

  it('has the figure of the case in force, in its own unit, with the default beside it', () => {
    const sheet = sheetWith({ 'price.x': { value: '9', unit: 'EUR/st', status: 'measured', source: 'Invoice' } });
    const input = declared(sheet, { ...price, figure: figure('5', 'EUR/t') });

    // 9 EUR for 0.90718474 t
    expect(input?.given?.value).toMatch(/^9\.92080179831/);
    expect(input?.given?.provenance).toEqual({ status: 'measured', source: 'Invoice' });
    expect(input?.usual.value).toBe('5');
    expect(sheet.problems).toEqual([]);
  });

  it('is typed in percent and reckoned as a share', () => {
    const sheet = sheetWith({});
    const spec: InputSpec = { id: 'share', label: 'Share', unit: '1', figure: figure('14', '%'), allowed: fraction };
    const share = sheet.input(spec);
    sheet.define('rest', 'Rest', '1', share.complement());
    const graph = sheet.graph.build();

    expect(graph.inputs[0]).toMatchObject({ entryUnit: '%', factor: '0.01' });
    expect(share.unit.text).toBe('1');
    expect(decimalAt(graph, 'rest')).toBe('0.86');
  });

  it('needs a figure from somebody, and says so once', () => {
    const sheet = sheetWith({});
    sheet.input(price);
    sheet.input(price);

    expect(sheet.problems).toEqual([{ kind: 'no figure', id: 'price.x', label: 'Price of x', unit: 'EUR/t' }]);
    expect(decimalAt(sheet.graph.build(), 'price.x')).toBe('no value given at price.x');
  });

  it.each([
    [{ value: '9', unit: 'EUR/bdt' }, 'wrong unit'],
    [{ value: '9', unit: 'EUR/ton' }, 'which ton'],
    [{ value: '-9', unit: 'EUR/t' }, 'outside'],
  ])('refuses %o by name: %s', (given, kind) => {
    const sheet = sheetWith({ 'price.x': given });
    const input = declared(sheet, price);

    expect(sheet.problems).toMatchObject([{ kind, id: 'price.x' }]);
    expect(input?.given).toBeNull();
  });

  it('keeps the problems of several inputs together', () => {
    const sheet = sheetWith({ a: { value: '1', unit: 'kWh' }, b: { value: '101', unit: '%' } });
    sheet.input({ id: 'a', label: 'A', unit: 'EUR' });
    sheet.input({ id: 'b', label: 'B', unit: '1', entry: '%', allowed: fraction });
    sheet.input({ id: 'c', label: 'C', unit: 'EUR' });

    expect(sheet.problems.map((problem) => problem.kind)).toEqual(['wrong unit', 'outside', 'no figure']);
  });
});

describe('an input that may be missing', () => {
  it('is nothing of its unit without a default or a figure', () => {
    const sheet = sheetWith({});
    const absent = sheet.optional(price);

    expect(absent.operation).toMatchObject({ op: 'constant', digits: '0' });
    expect(absent.unit.text).toBe('EUR/t');
    expect(sheet.problems).toEqual([]);
    expect(sheet.graph.build().inputs).toEqual([]);
  });

  it('is there when the case gives a figure, or the program a default', () => {
    expect(sheetWith({ 'price.x': { value: '1', unit: 'EUR/t' } }).optional(price).operation.op).toBe('input');
    expect(sheetWith({}).optional({ ...price, figure: figure('1', 'EUR/t') }).operation.op).toBe('input');
  });

  it('is not there because every object of JavaScript has something of that name', () => {
    const sheet = sheetWith({});

    expect(sheet.isGiven('constructor')).toBe(false);
    expect(sheet.optional({ ...price, id: 'toString' }).operation.op).toBe('constant');
  });
});

describe('money on the sheet', () => {
  const sheet = () => sheetWith({ 'price.x': { value: '9', unit: 'SEK/t' } }, { currency: 'SEK' });

  it('is that of the case, in inputs, constants and results', () => {
    const page = sheet();
    const cost = page
      .input(price)
      .times(page.constant('2', 't'))
      .times(page.constant('0.5'))
      .plus(page.constant('10', 'EUR'));
    page.define('cost', 'Cost', 'EUR', cost);
    const graph = page.graph.build();

    expect(graph.inputs[0]?.entryUnit).toBe('SEK/t');
    expect(nodeNamed(graph, 'cost').unit.text).toBe('SEK');
    expect(decimalAt(graph, 'cost')).toBe('19');
    expect(page.problems).toEqual([]);
  });

  it('has no default in a currency other than the euro, for no rate is assumed', () => {
    const page = sheet();
    const input = declared(page, { id: 'price.y', label: 'Price of y', unit: 'EUR/t', figure: figure('5', 'EUR/t') });

    expect(input?.usual).toEqual({
      value: null,
      low: null,
      high: null,
      provenance: { status: 'none', source: 'No default in this currency' },
    });
    expect(page.problems).toMatchObject([{ kind: 'no figure', id: 'price.y', unit: 'SEK/t' }]);
  });

  it('leaves defaults that are not money alone', () => {
    const input = declared(sheet(), { id: 'use', label: 'Use', unit: 'kWh/bdt', figure: figure('5', 'kWh/bdt') });

    expect(input?.usual.value).toBe('5');
  });
});

describe('limits that many inputs share', () => {
  it.each([
    [fraction, '0', '100'],
    [notNegative, '0', '1e9'],
    [positive, '1e-9', '1e9'],
  ])('%o let %s and %s through', (allowed, ...values) => {
    for (const value of values) {
      const sheet = sheetWith({ x: { value, unit: '%' } });
      sheet.input({ id: 'x', label: 'X', unit: '1', entry: '%', allowed });
      expect([value, sheet.problems]).toEqual([value, []]);
    }
  });

  it.each([
    [fraction, ['-0.001', '100.001']],
    [notNegative, ['-0.001']],
    [positive, ['0', '-1']],
  ])('%o refuse %s', (allowed, values) => {
    for (const value of values) {
      const sheet = sheetWith({ x: { value, unit: '%' } });
      sheet.input({ id: 'x', label: 'X', unit: '1', entry: '%', allowed });
      expect(sheet.problems).toMatchObject([{ kind: 'outside', given: value }]);
    }
  });
});

describe('figures that nobody asked for', () => {
  it('are found once the model is written down', () => {
    const sheet = sheetWith({ 'price.x': { value: '1', unit: 'EUR/t' }, 'price.z': { value: '1', unit: 'EUR/t' } });
    sheet.input(price);

    expect(sheet.unasked()).toEqual(['price.z']);
  });
});
