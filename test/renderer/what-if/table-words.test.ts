import { describe, expect, it } from 'vitest';
import { NumberStyle } from '../../../renderer/numbers/number-style.ts';
import { cellText } from '../../../renderer/screens/what-if/table/cell-form.ts';
import { chosenSides, inputChoices } from '../../../renderer/screens/what-if/table/input-choices.ts';
import { readoutOf } from '../../../renderer/screens/what-if/table/readout.ts';
import { shownTable } from '../../../renderer/screens/what-if/table/shown-table.ts';
import { tableCells } from '../../../renderer/screens/what-if/table/table-cells.ts';
import {
  basisWords,
  brokenLimits,
  sideName,
  sideWords,
  tableFinding,
} from '../../../renderer/screens/what-if/table/table-words.ts';
import { resultWords } from '../../../renderer/screens/what-if/tornado/result-words.ts';
import { demonstrationSpread } from '../open-demonstration.ts';
import { sensitivityOf, swing } from './swings.ts';
import { smallTable } from './tables.ts';

const spread = demonstrationSpread();
const numbers = new NumberStyle('en', 'EUR');
const words = resultWords('difference.total', spread, numbers);

describe('words on the map', () => {
  it('name both sides with their units', () => {
    expect(sideWords(sideName(smallTable.across, spread, numbers))).toBe('Net price agreed (Kraft pulp), €/adt');
    expect(sideWords({ name: 'Tonnes for the same service', unit: '' })).toBe('Tonnes for the same service');
    expect(basisWords(words, spread, '')).toBe('€/t, recovered less virgin');
  });

  it('tell the main finding in a sentence', () => {
    expect(tableFinding(smallTable, words, spread, 'en')).toBe(
      'Over net price agreed (Kraft pulp) and moisture: recovered cheaper in 3, virgin cheaper in 1 of 6 cells; as today \u221260.00 €/t.',
    );
  });

  it('name the limits that any cell breaks, once each', () => {
    expect(brokenLimits(smallTable)).toEqual(['Landfill permit']);
  });

  it('read out the cell under the pointer', () => {
    const grid = { left: 0, top: 0, width: 300, height: 60, columns: 3, rows: 2 };
    const figures = { across: ['400', '450', '500'], down: ['7.5', '10.0'] };
    const at = (x: number, y: number): string => readoutOf(smallTable, grid, { x, y }, figures, words, 'en');

    expect(at(250, 10)).toBe('across 500, down 10.0: +30.00 €/t; breaks Landfill permit');
    expect(at(250, 50)).toBe('across 500, down 7.5: cannot be');
    expect(at(400, 50)).toBe('');
  });

  it('write no more digits into a cell than the table has meaning for', () => {
    expect(cellText(-56.4, 180, 'en', true)).toBe('\u221256');
    expect(cellText(2.345, 4, 'de', true)).toBe('+2,3');
    expect(cellText(0.01, 180, 'en', true)).toBe('0');
    expect(cellText(38.7, 180, 'en', false)).toBe('39');
  });
});

describe('a table of present values', () => {
  const ofPlan = resultWords('investment.npv', spread, numbers);
  const shown = shownTable(
    { ...smallTable, cells: smallTable.cells.map((row) => row.map((value) => value * 1e6)) },
    ofPlan,
  );

  it('is in millions, and leaves blank what cannot be', () => {
    expect(shown.cells).toEqual(smallTable.cells);
  });

  it('lets the plan pay above nothing and lose below', () => {
    expect(tableFinding(shown, ofPlan, spread, 'en')).toBe(
      'Over net price agreed (Kraft pulp) and moisture: the plan pays in 1, the plan loses in 3 of 6 cells; as today \u221260.00 € million.',
    );
  });

  it('names its terms, for it is no difference, and writes no plus', () => {
    const grid = { left: 0, top: 0, width: 300, height: 60, columns: 3, rows: 2 };
    const figures = { across: ['400', '450', '500'], down: ['7.5', '10.0'] };

    expect(basisWords(ofPlan, spread, 'real, prices of 2024, before financing')).toBe(
      '€ million, real, prices of 2024, before financing',
    );
    expect(readoutOf(shown, grid, { x: 250, y: 10 }, figures, ofPlan, 'en')).toBe(
      'across 500, down 10.0: 30.00 € million; breaks Landfill permit',
    );
  });
});

describe('the table as cells', () => {
  it('holds the highest row first, as in the picture, and leaves blank what cannot be', () => {
    expect(tableCells(smallTable, { across: 'price', down: 'moisture' }, { unit: '€/t', decimals: 2 })).toEqual([
      ['moisture \\ price; €/t', 400, 450, 500],
      [10, -60, 0, 30],
      [7.5, -90, -30, Number.NaN],
    ]);
  });
});

describe('choosing two inputs', () => {
  it('offers those with a known range first, each by its largest swing', () => {
    const choices = inputChoices(
      sensitivityOf([swing('heat', 0, -120, { where: 'Virgin middle ply' })], [swing('service', 100, -200)]),
      spread,
    );
    expect(choices).toEqual([
      { value: 'heat', label: 'heat (virgin)' },
      { value: 'service', label: 'service' },
    ]);
  });

  it('lets the two change places rather than stand for one input twice', () => {
    expect(chosenSides({ across: 'a', down: 'b' }, 'across', 'b')).toEqual({ across: 'b', down: 'a' });
    expect(chosenSides({ across: 'a', down: 'b' }, 'down', 'c')).toEqual({ across: 'a', down: 'c' });
  });
});
