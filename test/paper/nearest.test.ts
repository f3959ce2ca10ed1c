import { describe, expect, it } from 'vitest';
import { nearest } from '../../src/paper/nearest.ts';

const known = [
  'price.electricity',
  'price.fuel',
  'price.water',
  'product.tonnes',
  'product.hours',
  'material.bskp.price',
];

describe('names near to one that is not known', () => {
  it.each([
    ['price.electrcity', 'price.electricity'],
    ['Price.Electricity', 'price.electricity'],
    ['product.tons', 'product.tonnes'],
    ['material.bksp.price', 'material.bskp.price'],
    ['price.waters', 'price.water'],
  ])('begin for "%s" with %s', (name, expected) => {
    expect(nearest(name, known)[0]).toBe(expected);
  });

  it('are none where nothing is alike', () => {
    expect(nearest('zzz', known)).toEqual([]);
    expect(nearest('', known)).toEqual([]);
    expect(nearest('x', [])).toEqual([]);
  });

  it('are three at most, the likeliest first', () => {
    const found = nearest('ab-cd-ef', ['ab-cd-xx', 'ab-cd-ef-1', 'ab-cd-ef', 'ab-cd-e', 'qq']);

    expect(found).toEqual(['ab-cd-ef', 'ab-cd-e', 'ab-cd-ef-1']);
  });

  it('stand in the order of the list where they are equally alike', () => {
    expect(nearest('price.x', ['price.a', 'price.b'])).toEqual(['price.a', 'price.b']);
  });
});
