import { describe, expect, it } from 'vitest';
import { readPlainNumber } from '../../../src/cli/read-plain-number.ts';
import { type ReadMonths, readMonths } from '../../../src/study/months/read-months.ts';
import { badRowSentence } from '../../../src/wording/month-sentences.ts';

const read = (text: string, mark: '.' | ',' = '.'): ReadMonths =>
  readMonths(text, mark, (cell) => readPlainNumber(cell, mark));
const two = [
  { month: '2024-01', pulp: '620.5', recovered: '110' },
  { month: '2024-02', pulp: '615', recovered: '-4.25' },
];

describe('months that are pasted', () => {
  it.each([
    ['tabs', '2024-01\t620.5\t110\r\n2024-02\t615\t-4.25\r\n', '.'],
    ['semicolons and a decimal comma', '2024-01;620,5;110\n2024-02;615;−4,25', ','],
    ['commas', '2024-01,620.5,110\n2024-02,615,-4.25', '.'],
    ['commas before spaces, and decimal commas', '2024-01, 620,5, 110\n2024-02, 615, -4,25', ','],
    ['quotation marks', '"2024-01","620.5","110"\n"2024-02","615","-4.25"', '.'],
    ['headings and empty rows', 'Month\tPulp\tPaper\n\n2024-01\t620.5\t110\n\t\t\n2024-02\t615\t-4.25', '.'],
    ['an empty cell at the end', '2024-01\t620.5\t110\t\n2024-02\t615\t-4.25\t', '.'],
  ] as const)('are read with %s', (_, text, mark) => {
    expect(read(text, mark)).toEqual({ points: two, bad: [] });
  });

  it('tell every row that is none by its number, and keep the others', () => {
    const text = 'Month;Pulp;Paper\n2024-01;620.5;110\n2024-02;x;110\n\n2024-03;600\n;600;110\n2024-05;600;1,100';

    expect(read(text).points).toEqual([two[0]]);
    expect(read(text).bad.map(badRowSentence)).toEqual([
      'Row 3 (“2024-02;x;110”): the pulp price “x” is not a number.',
      'Row 5 (“2024-03;600”) has 2 cells; wanted are three: month, pulp price, recovered price.',
      'Row 6 (“;600;110”) names no month.',
      'Row 7 (“2024-05;600;1,100”): the recovered price “1,100” can be read in two ways; write it without marks between thousands.',
    ]);
  });

  it('are at most 600', () => {
    const text = Array.from({ length: 602 }, (_, place) => `m${String(place)}\t600\t100`).join('\n');

    expect(read(text).points).toHaveLength(600);
    expect(read(text).bad.map(({ row, kind }) => [row, kind])).toEqual([
      [601, 'too many'],
      [602, 'too many'],
    ]);
  });

  it('have names of at most 40 characters', () => {
    expect(read(`${'m'.repeat(41)}\t600\t100`).bad[0]?.kind).toBe('month too long');
  });

  it('are none in an empty text', () => {
    expect(read(' \n\t\n')).toEqual({ points: [], bad: [] });
  });
});
