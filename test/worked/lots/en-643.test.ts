import { expect, test } from 'vitest';
import { materialEntries } from '../../../src/paper/catalogue.ts';
import { paperGrades } from '../../../src/paper/materials/en-643.ts';

// Non-paper and total unwanted material, per cent by weight, of grades of EN 643:2014. Read on grade pages that quote the standard, year not seen:
// veyzle.com, list of grades (1.01 to 1.05.00); vipagroup.com, nodes 72 and 74 (1.09, 1.11), 140 (4.03) and 157 (5.02); raviraintl.com (2.01,
// 2.03, 2.06, 3.10, 3.18, 4.02). That non-paper is usually below 1.5 %: DIN EN 643:2014, abstract of the catalogue, Beuth.
test.each([
  ['1.01.00', '1.5', '3'],
  ['1.02.00', '1.5', '2.5'],
  ['1.03.00', '1', '2'],
  ['1.04.00', '1.5', '3'],
  ['1.05.00', '1.5', '2.5'],
  ['1.09.00', '0.5', '1'],
  ['1.11.00', '0.5', '2.5'],
  ['2.01.00', '0.5', '1.5'],
  ['2.03.00', '0.5', '1'],
  ['2.06.01', '1', '2'],
  ['3.10.00', '0.5', '1'],
  ['3.18.00', '0.25', '0.5'],
  ['4.02.00', '1', '2.5'],
  ['4.03.00', '1', '2.5'],
  ['5.02.00', '1.5', '3'],
])('grade %s tolerates %s %% non-paper and %s %% unwanted', (code, nonPaper, unwanted) => {
  expect(paperGrades.get(code)).toMatchObject({ nonPaper, unwanted });
});

test('no grade tolerates more non-paper than 1.5 %, nor more non-paper than unwanted material in all', () => {
  for (const { nonPaper, unwanted } of paperGrades.values()) {
    expect(Number(nonPaper)).toBeLessThanOrEqual(1.5);
    expect(Number(nonPaper)).toBeLessThanOrEqual(Number(unwanted));
  }
});

test('every grade names a paper of the program that comes nearest, where its tolerances were read, and its group', () => {
  for (const { like, source, group, code } of paperGrades.values()) {
    expect(materialEntries.has(like)).toBe(true);
    expect(source).toContain('grade page');
    expect(group).toBe(['ordinary', 'medium', 'high', 'kraft', 'special'][Number(code.charAt(0)) - 1]);
  }
});
