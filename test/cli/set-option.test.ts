import { describe, expect, it } from 'vitest';
import type { Comparison } from '../../src/index.ts';
import { demonstrationFile as file, jsonOf, tonne } from './terminal.ts';

const compared = async (...sets: readonly string[]): Promise<Comparison> =>
  (await jsonOf(['compare', file, ...sets.flatMap((set) => ['--set', set])])) as Comparison;

const untouched = compared();

/** The accounts that changed, as "route.account". */
async function movedBy(...sets: readonly string[]): Promise<readonly string[]> {
  const [before, after] = [await untouched, await compared(...sets)];
  return before.routes.flatMap((route, r) =>
    route.accounts.flatMap((account, a) =>
      account.perTonneExact === after.routes[r]?.accounts[a]?.perTonneExact ? [] : [`${route.id}.${account.id}`],
    ),
  );
}

const inForce = async (id: string, ...sets: readonly string[]) => {
  const inputs = (await jsonOf(['inputs', file, ...sets.flatMap((set) => ['--set', set])])) as {
    id: string;
    value: string;
    unit: string;
    source: string;
    touched: boolean;
  }[];
  return inputs.find((input) => input.id === id);
};

describe('--set', () => {
  it.each([
    { set: 'price.water=0.5', lines: ['virgin.water', 'recovered.water'] },
    { set: 'material.mixed.price=120', lines: ['recovered.fibre'] },
    { set: 'virgin.labour=700000', lines: ['virgin.labour'] },
    { set: 'recovered.charge.qa=7', lines: ['recovered.charges'] },
    { set: 'destination.landfill.gateFee=90', lines: ['virgin.residues', 'recovered.residues'] },
  ])('$set moves $lines and nothing else', async ({ set, lines }) => {
    expect(await movedBy(set)).toEqual(lines);
  });

  it('moves money by price times amount', async () => {
    const [before, after] = [await untouched, await compared('recovered.charge.qa=7.5')];

    expect(after.difference.perTonne - before.difference.perTonne).toBeCloseTo(1.5, 9);
    expect(after.difference.perYear - before.difference.perYear).toBeCloseTo(1.5 * 96_000, 3);
  });

  it('may stand several times, and of one input the last counts', async () => {
    expect(await movedBy('price.water=0.5', 'virgin.labour=700000')).toEqual([
      'virgin.water',
      'virgin.labour',
      'recovered.water',
    ]);
    expect((await inForce('price.water', 'price.water=0.5', 'price.water=0.6'))?.value).toBe('0.6');
  });

  it.each([
    { set: 'price.electricity=0.12 EUR/kWh', id: 'price.electricity', value: '0.12', unit: 'EUR/kWh' },
    { set: 'price.electricity=120 EUR/MWh', id: 'price.electricity', value: '0.12', unit: 'EUR/kWh' },
    { set: 'price.electricity=0.12 €/kWh', id: 'price.electricity', value: '0.12', unit: 'EUR/kWh' },
    { set: 'material.mixed.moisture=14 %', id: 'material.mixed.moisture', value: '14', unit: '%' },
    { set: 'material.mixed.moisture = 14', id: 'material.mixed.moisture', value: '14', unit: '%' },
    { set: 'recovered.priceDifference=-50', id: 'recovered.priceDifference', value: '-50', unit: 'EUR/t' },
  ])('"$set" is $value $unit, and says where it comes from', async ({ set, id, value, unit }) => {
    expect(await inForce(id, set)).toMatchObject({ value, unit, touched: true, source: 'Given with --set' });
  });

  it('refuses a wrong unit by name', async () => {
    const { code, out, err } = await tonne(['compare', file, '--set', 'price.electricity=0.12 EUR/GJ']);

    expect([code, out]).toEqual([1, '']);
    expect(err).toBe(
      'Electricity (price.electricity): "EUR/GJ" is another kind of unit; it is given in €/kWh (written EUR/kWh).\n',
    );
  });

  it('tells all that is wrong with several at once', async () => {
    const sets = ['price.electricity=0.12 EUR/GJ', 'price.wate=1', 'product.tonnes=none', 'recovered.mixed.share=130'];
    const { code, err } = await tonne(['check', file, ...sets.flatMap((set) => ['--set', set])]);

    expect(code).toBe(1);
    expect(err.trim().split('\n')).toHaveLength(4);
    expect(err).toContain('near to it are "price.water"');
  });

  it('works with explain and line as well', async () => {
    const explained = (await jsonOf(['explain', file, 'virgin.cost.charges', '--set', 'price.water=0.5'])) as object;
    expect(explained).toMatchObject({ value: 0 });
    const { out } = await tonne(['explain', file, 'price.water', '--set', 'price.water=0.5 EUR/m3']);
    expect(out).toContain('Input, 0.5 €/m³. Given; the default is');
    const line = (await jsonOf(['line', file, 'recovered', 'mixed', '--set', 'material.mixed.ash=18'])) as {
      yield: number;
    };
    expect(line.yield).not.toBe(((await jsonOf(['line', file, 'recovered', 'mixed'])) as { yield: number }).yield);
  });
});

describe('a carbon factor given with --set', () => {
  const set = ['--set', 'carbon.grid=0.3'];

  it('needs a source', async () => {
    const { code, out, err } = await tonne(['footprint', file, ...set]);

    expect([code, out]).toEqual([1, '']);
    expect(err).toMatch(/\(carbon\.grid\) is a carbon factor: a figure .* must name its source\.\n$/u);
  });

  it('takes it from --source, as all figures of --set do', async () => {
    const source = ['--source', 'Contract of 2026'];
    const { code, out } = await tonne(['inputs', file, ...set, '--set', 'price.water=0.5', ...source]);

    expect(code).toBe(0);
    for (const id of ['carbon.grid', 'price.water'])
      expect(out.split('\n').find((line) => line.startsWith(`${id} `))).toMatch(/ touched .* Contract of 2026$/u);
  });

  it('by contract gives scope 2 another figure, below the sum', async () => {
    const contract = ['--set', 'carbon.contract=0.05', '--source', 'Contract of 2026'];
    const { out } = await tonne(['footprint', file, ...contract]);

    expect(out).toMatch(/^All three .*\n─[─ ]+\nScope 2, market-based +[\d.]+ +[\d.]+ +\u2212?[\d.]+$/mu);
    expect((await tonne(['footprint', file])).out).not.toContain('market-based');
  });

  it('at the margin gives the effect of the difference, in the last column alone', async () => {
    const { out } = await tonne(['footprint', file, '--set', 'carbon.gridMarginal=0.5', '--source', 'Study']);

    expect(out).toMatch(/^Effect of the difference on the grid \(marginal\), not in the sum +\u2212?[\d.,]+$/mu);
  });

  it('takes no blanks for a source', async () => {
    const { code, err } = await tonne(['footprint', file, ...set, '--source', ' ']);

    expect(code).toBe(1);
    expect(err).toContain('must name its source');
  });
});

describe('what cannot be worked out', () => {
  it('is not compared', async () => {
    const { code, out, err } = await tonne(['compare', file, '--json', '--set', 'virgin.bskp.share=95']);

    expect([code, out]).toEqual([1, '']);
    expect(err).toMatch(
      /^Share of the dry fresh stock \(Virgin middle ply, .*\) cannot be worked out: .* they already take 115 %\.$/mu,
    );
  });

  it('is checked, and the laws that it breaks are named', async () => {
    const { code, out, err } = await tonne(['check', file, '--set', 'virgin.bskp.share=95']);

    expect(code).toBe(1);
    expect(out).toMatch(/^no {3}Costs add up$/mu);
    expect(out).toContain('cannot be worked out');
    expect(err).toContain('Not so: costs add up.\n');
  });

  it('is explained: what failed and where it began', async () => {
    const { code, out } = await tonne(['explain', file, 'virgin.cost.total', '--set', 'virgin.bskp.share=95']);

    expect(code).toBe(0);
    expect(out).toMatch(
      /^Whole cost \(Virgin middle ply\) = Share of the dry fresh stock \(Virgin middle ply, .*\) cannot be/u,
    );
  });
});
