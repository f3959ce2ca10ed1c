import { describe, expect, test } from 'vitest';
import {
  type OpenCase,
  changeInput,
  compare,
  editStructure,
  explain,
  footprint,
  spreadOf,
} from '../../../src/index.ts';
import { statementPage } from '../../../src/report/statement-page.ts';
import { workOut } from '../../../src/study/open-case.ts';
import { smallCase } from '../../support/small-case.ts';

const slush = [{ id: 'slush', like: 'pumps' }];
const opened = (figures: Readonly<Record<string, string>>): OpenCase => {
  const found = workOut(smallCase({ stages: slush, figures }));
  if (!found.ok) throw new Error(JSON.stringify(found.problems));
  return found.value;
};

const power = {
  'mill.line.slush.electricity': '400 kWh/bdt',
  'other.line.slush.electricity': '150 kWh/bdt',
  'mill.machine.otherHeatPerGrossTonne': '0 GJ/gt',
  'price.electricity': '0.1 EUR/kWh',
};

// Source: worked by hand. All else is the same in both routes: 250 kWh at 0.10 are 25.00, at 0.16 they are 40.00.
describe('the marginal price of power', () => {
  const open = opened({
    ...power,
    'other.machine.otherHeatPerGrossTonne': '0 GJ/gt',
    'price.electricityMarginal': '0.16 EUR/kWh',
  });

  test('is told under the headline, as what takes the place of the average', () => {
    expect(statementPage(compare(open), spreadOf(open), 'en')).toContain(
      'With the 250 kWh a tonne that Mill takes more at the marginal price, 0.16 EUR/kWh in place of the average of 0.1, ' +
        'it costs 40.00 EUR a tonne more than Other: 4.00 million a year.',
    );
  });

  test('stands beside the difference on the spread, which it leaves as it is', () => {
    const { difference, atMarginalPower } = spreadOf(open);

    expect(difference.shownPerTonne).toBe('25.00');
    expect(atMarginalPower?.shownPerTonne).toBe('40.00');
  });

  test('is told nowhere where nobody gave one', () => {
    const without = opened(power);

    expect(spreadOf(without).atMarginalPower).toBeNull();
    expect(compare(without).difference).not.toHaveProperty('atMarginalPower');
    expect(statementPage(compare(without), spreadOf(without), 'en')).not.toContain('marginal');
  });
});

describe('a figure that nobody gave yet', () => {
  test('is offered beside figures of the same material, until it is given', () => {
    const open = opened({});
    const offered = (of: OpenCase): readonly string[] =>
      (explain(of, 'material.paper.cost')?.further ?? []).map(({ id }) => id);

    expect(offered(open)).toContain('material.paper.stockDays');
    expect(offered(open)).not.toContain('price.electricityMarginal');
    const given = changeInput(open, 'material.paper.stockDays', '20');
    if (!given.ok) throw new Error('Refused');
    expect(offered(given.value)).not.toContain('material.paper.stockDays');
  });

  test('is offered beside what it would change, and not among hundreds', () => {
    const beside = (id: string): readonly string[] => (explain(opened({}), id)?.further ?? []).map((each) => each.id);

    expect(beside('mill.cost.electricity.preparation')).toEqual(['price.certificate', 'price.electricityMarginal']);
    expect(beside('mill.residue.primary.wet')).toContain('residue.primary.electricity');
    expect(beside('mill.residue.primary.wet')).not.toContain('residue.biological.electricity');
    expect(beside('mill.cost.total')).toEqual([]);
  });
});

test('freight given by the tonne beside freight by the load is remarked on', () => {
  const sentences = (figures: Readonly<Record<string, string>>): string =>
    spreadOf(opened(figures))
      .warnings.map(({ sentence }) => sentence)
      .join(' ');
  const byLoad = { 'material.paper.load.price': '900 EUR/load' };

  expect(sentences({ ...byLoad, 'material.paper.freight': '30 EUR/t-ar' })).toContain(
    'Paper: freight is worked out by the load, so the freight given by the tonne, 30, counts for nothing.',
  );
  expect(sentences(byLoad)).not.toContain('by the load');
});

describe('how free allocation is seen', () => {
  const open = opened({ 'carbon.freeAllocation': '1000 tCO2e/a', 'price.carbon': '80 EUR/tCO2e' });
  const seenAs = (from: OpenCase, view: 'opportunity' | null): OpenCase => {
    const edited = editStructure(from, { kind: 'set carbon price', scheme: { view } });
    if (!edited.ok) throw new Error(JSON.stringify(edited.problems));
    return edited.value;
  };

  test('is one edit away, and one back', () => {
    const turned = seenAs(open, 'opportunity');

    // 1000 t at 80 are 80,000 a year.
    expect(turned.values.number('mill.costPerYear.carbon.freeAllocation')).toBe(-80_000);
    expect(footprint(turned).allocationView).toBe('opportunity');
    expect(seenAs(turned, null).content).toEqual(open.content);
    expect(footprint(open).allocationView).toBe('cash');
  });

  test('is no question where there is none', () => {
    expect(footprint(opened({})).allocationView).toBeNull();
  });
});
