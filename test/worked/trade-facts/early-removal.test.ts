import { describe, expect, test } from 'vitest';
import { type OpenCase, editStructure, lineBalance, startCase } from '../../../src/index.ts';
import { changeInput, workOut } from '../../../src/study/open-case.ts';
import { valueOf } from '../../examples/demonstration.ts';
import { smallCase } from '../../support/small-case.ts';

// Common practice, no source: debris is taken out first, while it is large; what stays in is pumped, heated and screened as if it were
// stock, and breaks up on the way.
describe('a tenth of debris, taken out before or after a stage of 50 kWh and 0.2 GJ', () => {
  const early = valueOf(
    workOut(
      smallCase({
        stages: [
          { id: 'pull', like: 'pumps' },
          { id: 'work', like: 'pumps' },
        ],
        figures: {
          'material.paper.lights': '10 %',
          'mill.line.pull.removal.lights': '100 %',
          'mill.line.pull.electricity': '0 kWh/bdt',
          'mill.line.work.electricity': '50 kWh/bdt',
          'mill.line.work.heat': '0.2 GJ/bdt',
          'price.electricity': '0.1 EUR/kWh',
        },
      }),
    ),
  );
  const late = valueOf(editStructure(early, { kind: 'move stage', route: 'mill', line: 'line', stage: 'pull', to: 1 }));
  const more = (id: string): number => late.values.number(id) - early.values.number(id);

  test('keeps figures and yield when it is moved: the same debris leaves', () => {
    expect(late.content.inputs).toEqual(early.content.inputs);
    expect(lineBalance(late, 'mill', 'line')?.yield).toBeCloseTo(0.9, 14);
    expect(more('mill.residue.coarse.dry')).toBeCloseTo(0, 14);
  });

  test('costs 5.56 kWh a tonne more when it is taken out late', () => {
    // 1/0.9 bdt is fed for a tonne. Early, 1 bdt of it reaches the stage: 50 kWh. Late, all of it does: 55.5556.
    expect(early.values.number('mill.line.work.electricityUse')).toBeCloseTo(50, 10);
    expect(late.values.number('mill.line.work.electricityUse')).toBeCloseTo(50 / 0.9, 10);
    expect(more('mill.cost.electricity.preparation')).toBeCloseTo(0.1 * (50 / 0.9 - 50), 10);
  });

  test('costs 0.0222 GJ a tonne more in heat, at 10 per GJ', () => {
    expect(more('mill.heat.stock')).toBeCloseTo(0.2 / 0.9 - 0.2, 12);
    expect(more('mill.cost.heat.stock')).toBeCloseTo(10 * (0.2 / 0.9 - 0.2), 10);
  });

  test('shows in the difference of the two routes', () => {
    expect(more('difference.total')).toBeCloseTo(more('mill.cost.total'), 10);
    expect(more('difference.total')).toBeGreaterThan(0.5);
  });
});

describe('debris that the vat of testliner no longer pulls out', () => {
  const start = valueOf(
    startCase({
      title: 'Early or late',
      virgin: 'kraftliner',
      recovered: 'testliner',
      tonnesPerYear: '100000',
      currency: 'EUR',
      priceYear: '2024',
    }),
  );
  const late = ['occ', 'mixed'].reduce<OpenCase>((open, line) => {
    const without = valueOf(changeInput(open, `recovered.${line}.vat.removal.lights`, '0'));
    // The same 55 % of the film leaves only at the pumps, behind all screens and cleaners.
    const figures = { [`recovered.${line}.pumps.removal.lights`]: { value: '55', unit: '%' } };
    return valueOf(workOut({ ...without.content, inputs: { ...without.content.inputs, ...figures } }));
  }, start);

  test('loads the screens with film: a third more is rejected there', () => {
    const atScreens = (open: OpenCase) =>
      lineBalance(open, 'recovered', 'occ')?.stages.find(({ stage }) => stage === 'coarse');

    expect(atScreens(late)?.entersTotal).toBeGreaterThan(atScreens(start)?.entersTotal ?? NaN);
    expect(atScreens(late)?.leavesTotal).toBeGreaterThan((atScreens(start)?.leavesTotal ?? NaN) * 1.3);
  });

  test('costs electricity in every stage between', () => {
    for (const stage of ['detrash', 'hdc', 'coarse'])
      expect(late.values.number(`recovered.occ.${stage}.electricityUse`), stage).toBeGreaterThan(
        start.values.number(`recovered.occ.${stage}.electricityUse`),
      );
  });
});
