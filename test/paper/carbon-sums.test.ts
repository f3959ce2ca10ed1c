import { describe, expect, it } from 'vitest';
import { Decimal } from '../../src/kernel/evaluate/decimal-settings.ts';
import { carbonFactor, carbonFactors } from '../../src/paper/carbon-factors.ts';
import sourceRows from '../../src/paper/defaults/sources.json' with { type: 'json' };

interface SourceRow {
  readonly typical?: number;
  readonly unit: string;
}

const sources = new Map<string, SourceRow>(Object.entries(sourceRows));

/** The typical figure of a row, as its digits say it. */
function typical(id: string): Decimal {
  return new Decimal(sources.get(id)?.typical ?? NaN);
}

// What a row is multiplied by to be in the unit of the factor that cites it. 1 GJ is 1000/3.6 kWh; 1 short ton is 0.90718474 t.
const conversions: Readonly<Record<string, Decimal>> = {
  'kgCO2e/kWh to kgCO2e/GJ': new Decimal(1000).dividedBy('3.6'),
  'kgCO2/kWh to kgCO2e/GJ': new Decimal(1000).dividedBy('3.6'),
  'tCO2e/short ton to kgCO2e/t-ar': new Decimal(1000).dividedBy('0.90718474'),
  '% to tC/bdt': new Decimal('0.01'),
};

/** Factors that are worked out from more than one row, or from a row and a global warming potential. */
const sums: readonly { readonly key: string; readonly sum: Decimal }[] = [
  {
    key: 'fuel.natural-gas.biogenic',
    sum: typical('defra23_ng_mineral_co2_net').minus(typical('defra23_ng_co2_net')).times(1000).dividedBy('3.6'),
  },
  { key: 'freight.road', sum: typical('defra25_freight_artic33_avg').plus(typical('defra25_freight_wtt_artic33_avg')) },
  { key: 'freight.rail', sum: typical('defra25_freight_rail').plus(typical('defra25_freight_wtt_rail')) },
  {
    key: 'freight.sea',
    sum: typical('defra25_freight_container_avg').plus(typical('defra25_freight_wtt_container_avg')),
  },
  // Grams of N2O per tonne times 265.
  { key: 'treatment.incineration-ch4-n2o', sum: typical('ipcc_incin_n2o_industrial').dividedBy(1000).times(265) },
  // Grams per kilogram are kilograms per tonne: 4 x 28 + 0.3 x 265.
  {
    key: 'treatment.composting',
    sum: typical('ipcc_compost_ch4_default').times(28).plus(typical('ipcc_compost_n2o_wet').times(265)),
  },
];

describe('a carbon factor that is worked out', () => {
  it.each(sums)('comes true exactly: $key', ({ key, sum }) => {
    expect(sum.toString()).toBe(carbonFactor(key).value);
  });

  it('is either read as it stands or among those checked here', () => {
    const derived = [...carbonFactors].filter(([, { status }]) => status === 'derived').map(([key]) => key);
    const checked = sums.map(({ key }) => key);

    expect(derived.filter((key) => !checked.includes(key))).toEqual([]);
  });

  it('shows in its note the figures that it adds', () => {
    for (const key of ['freight.road', 'freight.rail', 'freight.sea']) {
      const [tank = '', well = ''] = carbonFactor(key).note?.match(/0\.\d+/g) ?? [];
      expect(new Decimal(tank).plus(well).toString()).toBe(carbonFactor(key).value);
    }
  });
});

describe('a carbon factor that was read', () => {
  const read = [...carbonFactors].filter(([key, { status, source }]) => {
    const isSum = sums.some((each) => each.key === key);
    return !isSum && ['read', 'memory'].includes(status) && sources.has(source);
  });

  it.each(read)('is the figure of its row, to the last digit or to five where it was converted: %s', (_, figure) => {
    const factor = conversions[`${sources.get(figure.source)?.unit ?? ''} to ${figure.unit}`];
    const expected = typical(figure.source);

    expect(new Decimal(figure.value).toString()).toBe(
      factor === undefined ? expected.toString() : expected.times(factor).toSignificantDigits(5).toString(),
    );
  });
});
