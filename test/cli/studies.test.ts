import { describe, expect, it } from 'vitest';
import { demonstrationFile as file, tonne } from './terminal.ts';

describe('breakeven', () => {
  it('says of an input asked for by name that it does not move the result', async () => {
    const { code, out } = await tonne(['breakeven', file, 'product.hours', '--result', 'virgin.cost.water.fresh']);

    expect([code, out]).toEqual([0, 'product.hours does not move virgin.cost.water.fresh.\n']);
  });

  it('says so below the table of those that do', async () => {
    const args = ['breakeven', file, 'price.water', 'product.hours', '--result', 'virgin.cost.water.fresh'];
    const { out } = await tonne([...args, '--target', '3']);

    expect(out).toMatch(/^Where virgin\.cost\.water\.fresh meets 3/u);
    expect(out).toContain('\nproduct.hours does not move virgin.cost.water.fresh.\n');
    expect(out).not.toContain('price.water does not move');
  });
});

describe('table', () => {
  it('with the same input on both sides is used wrongly', async () => {
    const side = 'price.water=0.1..0.9';
    const { code, out, err } = await tonne(['table', file, side, side]);

    expect([code, out]).toEqual([2, '']);
    expect(err).toContain('two different inputs; "price.water" was given for both sides');
  });
});

describe('line', () => {
  it('with a share of nothing says that nothing is fed', async () => {
    const { out } = await tonne(['line', file, 'recovered', 'mixed', '--set', 'recovered.mixed.share=0']);

    expect(out).toContain('nothing is fed to it: its share of the stock is 0 %');
    expect(out).not.toContain('not yet kWh');
  });
});
