import { expect, it } from 'vitest';
import { columnsFor } from '../../../renderer/screens/lines/train-columns.ts';

it('shares the room among four stages', () => {
  const columns = columnsFor(1268, 4, 1366);

  expect(columns.whole).toBeLessThanOrEqual(1268);
  expect(columns.stage).toBeGreaterThan(200);
});

it.each([13, 17])('keeps the names of %d stages readable, and is then wider than the room', (stages) => {
  const columns = columnsFor(1268, stages, 1366);

  expect(columns.stage).toBeGreaterThanOrEqual(110);
  expect(columns.whole).toBeGreaterThan(1268);
});
