import { describe, expect, test } from 'vitest';
import { readCase } from '../../../src/case/read-case.ts';
import { writeCase } from '../../../src/case/write-case.ts';
import { problemSentence } from '../../../src/wording/problem-sentence.ts';
import { changeLot, type LotField } from '../../../src/study/lots/change-lot.ts';
import { editStructure } from '../../../src/study/edit-structure.ts';
import { valueOf, problemsOf } from '../../examples/demonstration.ts';
import { openDemonstration } from './open-demonstration.ts';
import { lotOf } from './sample-lots.ts';

const open = valueOf(editStructure(openDemonstration(), { kind: 'put lot', lot: lotOf('a') }));
const changed = (field: LotField, typed: string) =>
  valueOf(changeLot(open, 'a', field, typed)).content.lots!.offers[0]!;
const refused = (field: LotField, typed: string) => problemsOf(changeLot(open, 'a', field, typed)).map(problemSentence);

describe('what is typed of a lot', () => {
  test('is kept in the unit of its field, whatever unit was typed', () => {
    expect(changed('price', '118.06').figures.price).toBe('118.06');
    expect(Number(changed('price', '100 EUR/st-ar').figures.price)).toBeCloseTo(100 / 0.90718474, 9);
    expect(changed('moistureLimit', '10 %').figures.moistureLimit).toBe('10');
  });

  test('takes a figure away where nothing is typed', () => {
    expect(changed('tonnes', '').figures).not.toHaveProperty('tonnes');
    expect(changed('moisture', ' ')).not.toHaveProperty('moisture');
  });

  test('may be readings one after the other', () => {
    expect(changed('moisture', '12.1 13.4 11.8').moisture).toEqual(['12.1', '13.4', '11.8']);
  });

  test('is refused with a sentence where it cannot be true, and then nothing is lost', () => {
    expect(refused('moisture', '12 140')[0]).toContain(
      'Moisture as received (lots.a.moisture): 140 % was given; allowed is 0 to 100 %',
    );
    expect(refused('tonnes', '0')[0]).toContain('Weighed');
    expect(refused('price', 'dear')[0]).toContain('dear');
    expect(refused('price', '90 kWh')[0]).toContain('Price asked');
  });

  test('does not touch the model of the case', () => {
    const after = valueOf(changeLot(open, 'a', 'price', '99'));

    expect(after.model).toBe(open.model);
    expect(after.values).toBe(open.values);
  });

  test('is refused for a lot that is not there', () => {
    expect(problemsOf(changeLot(open, 'z', 'price', '1'))[0]).toMatchObject({ kind: 'unknown reference', given: 'z' });
  });
});

describe('lots in the file of a case', () => {
  test('are written and read again as they were', () => {
    expect(valueOf(readCase(writeCase(open.content)))).toEqual(open.content);
  });

  test('leave no trace once the last is removed', () => {
    const without = valueOf(editStructure(open, { kind: 'remove lot', lot: 'a' }));

    expect(without.content).not.toHaveProperty('lots');
  });

  test('take their share of a blend with them', () => {
    const two = valueOf(editStructure(open, { kind: 'put lot', lot: lotOf('b') }));
    const blended = valueOf(
      editStructure(two, { kind: 'set lots', options: { blend: { shares: { a: '40', b: '60' } } } }),
    );

    expect(valueOf(editStructure(blended, { kind: 'remove lot', lot: 'a' })).content.lots!.blend!.shares).toEqual({
      b: '60',
    });
  });

  test.each([
    ['a grade that nobody knows', { grade: '9.99.00' }, '9.99.00'],
    ['a day that is none', { validUntil: 'tomorrow' }, 'tomorrow'],
  ])('are refused for %s', (_, more, told) => {
    const problems = problemsOf(editStructure(open, { kind: 'put lot', lot: lotOf('c', more) }));

    expect(problems.map(problemSentence).join(' ')).toContain(told);
  });

  test('are refused where two have one name', () => {
    const text = writeCase({ ...open.content, lots: { offers: [lotOf('a'), lotOf('a')] } });

    expect(problemsOf(readCase(text))).toEqual([{ kind: 'said twice', path: 'lots.offers', given: 'a' }]);
  });
});
