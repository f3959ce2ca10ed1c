import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { bisected } from '../../support/bisected.ts';
import { evaluatedText } from '../../support/evaluation.ts';

// The whole tonne, and the list-price trap: all figures invented, all results worked by hand.
// N = 0.92; G = 0.92/0.92 = 1; M = 1/0.99 = 1.010101; fresh furnish 1.010101 - 0.08 x 0.97 = 0.932501; P = 0.97 x 0.932501 = 0.904526.
const story = evaluatedText(readFileSync(new URL('../../../examples/stories/s1.tonne', import.meta.url), 'utf8'));

const printed = (id: string, digits: number): string => story.exact(id).toFixed(digits);

describe('the machine of both routes', () => {
  test.each([
    { id: 'machine.gross', digits: 6, expected: '1.000000' },
    { id: 'machine.furnish', digits: 6, expected: '1.010101' },
    { id: 'machine.fresh', digits: 6, expected: '0.932501' },
    { id: 'machine.stock', digits: 6, expected: '0.904526' },
    { id: 'machine.wetEndAdditives', digits: 6, expected: '0.027975' },
    { id: 'machine.grossTonnes', digits: 6, expected: '1.086957' },
  ])('has $id $expected', ({ id, digits, expected }) => {
    expect(printed(`virgin.${id}`, digits)).toBe(expected);
    expect(printed(`recovered.${id}`, digits)).toBe(expected);
  });
});

describe('fibre bought for a tonne of product', () => {
  test('is 0.909071 bone-dry or 1.010079 air-dry tonnes of pulp at a yield of 0.995', () => {
    const airDry = story.exact('virgin.bought.pulp').times(story.exact('material.pulp.payable'));

    expect(printed('virgin.bought.pulp', 6)).toBe('0.909071');
    expect(airDry.toFixed(6)).toBe('1.010079');
  });

  test('is 1.330185 bone-dry tonnes or 1.477984 t as received of paper at a yield of 0.68', () => {
    expect(printed('recovered.bought.paper', 6)).toBe('1.330185');
    expect(printed('recovered.received.paper', 6)).toBe('1.477984');
  });
});

describe('the statement', () => {
  test.each([
    { line: 'fibre', id: 'fibre', virgin: '565.6444', recovered: '339.9362' },
    { line: 'freight', id: 'freight', virgin: '35.3528', recovered: '26.6037' },
    { line: 'power', id: 'electricity', virgin: '11.9997', recovered: '42.4329' },
    { line: 'disperser heat', id: 'heat.stock', virgin: '0.0000', recovered: '4.8844' },
    { line: 'chemicals of the line', id: 'chemicals.deinking', virgin: null, recovered: '53.2074' },
    { line: 'residues', id: 'residues', virgin: '0.8182', recovered: '76.6187' },
    { line: 'dryer heat', id: 'heat.dryers', virgin: '39.1304', recovered: '40.8696' },
    { line: 'effluent', id: 'water', virgin: '0.0000', recovered: '4.8000' },
    { line: 'extra starch', id: 'chemicals.starch', virgin: null, recovered: '14.1304' },
    { line: 'labour', id: 'labour', virgin: '2.0000', recovered: '12.0000' },
    { line: 'additives', id: 'additives', virgin: '4.1963', recovered: '4.1963' },
    { line: 'total', id: 'total', virgin: '659.1418', recovered: '619.6796' },
  ])('has $line $virgin virgin and $recovered recovered', ({ id, virgin, recovered }) => {
    if (virgin === null) expect(story.model.graph.positions.has(`virgin.cost.${id}`)).toBe(false);
    else expect(printed(`virgin.cost.${id}`, 4)).toBe(virgin);
    expect(printed(`recovered.cost.${id}`, 4)).toBe(recovered);
  });

  test('has nothing in any other account', () => {
    const others = ['credits', 'carbon', 'maintenance', 'machineFixed', 'productPrice', 'charges', 'capital'];

    for (const route of ['virgin', 'recovered'])
      for (const account of others) expect(story.number(`${route}.cost.${account}`)).toBeCloseTo(0, 30);
  });

  test('makes recovered paper 39.4621 a tonne and 3,946,213 a year cheaper', () => {
    expect(printed('difference.total', 4)).toBe('-39.4621');
    expect(printed('difference.totalPerYear', 0)).toBe('-3946213');
  });
});

describe('the two routes cost the same', () => {
  const differenceAt =
    (id: string) =>
    (figure: number): number =>
      story.withChanges({ [id]: figure.toFixed(12) }).number('difference.total');

  test('at a recovered-paper price of 256.70', () => {
    expect(bisected(230, 300, differenceAt('material.paper.price')).toFixed(2)).toBe('256.70');
  });

  test('at a pulp price of 520.93 net', () => {
    // With 20 % discount the list price is asked; the net price is 0.8 of it.
    const list = bisected(500, 700, differenceAt('material.pulp.price'));

    expect((0.8 * list).toFixed(2)).toBe('520.93');
  });

  test('at a line yield of 64.38 %', () => {
    const lost = bisected(32, 40, differenceAt('recovered.paper.clean.removal.fibre'));

    const there = story.withChanges({ 'recovered.paper.clean.removal.fibre': lost.toFixed(12) });

    expect((100 * there.number('recovered.paper.yield')).toFixed(2)).toBe('64.38');
  });
});

test('one point of yield, 68 to 67 %, costs 10.47 a tonne', () => {
  const poorer = story.withChanges({ 'recovered.paper.clean.removal.fibre': '33' });

  const dearer = poorer.number('recovered.cost.total') - story.number('recovered.cost.total');

  expect(poorer.number('recovered.paper.yield')).toBeCloseTo(0.67, 14);
  expect(dearer.toFixed(2)).toBe('10.47');
});

test('a list price taken without its discount shows 180.87 a tonne, 4.58 times the true advantage', () => {
  const listed = story.withChanges({ 'material.pulp.discount': '0' }).number('difference.total');

  expect((-listed).toFixed(2)).toBe('180.87');
  expect((listed / story.number('difference.total')).toFixed(2)).toBe('4.58');
});
