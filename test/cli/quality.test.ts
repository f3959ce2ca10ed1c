import { describe, expect, it } from 'vitest';
import { demonstrationFile as file, jsonOf, tonne } from './terminal.ts';

const set = (figures: Readonly<Record<string, string>>): readonly string[] =>
  Object.entries(figures).flatMap(([id, value]) => ['--set', `${id}=${value}`]);
const brightness = { 'virgin.bskp.brightness': '87', 'virgin.bhkp.brightness': '87', 'virgin.bctmp.brightness': '87' };
const tensile = {
  'product.strength.tensile': '60',
  'virgin.bskp.strength.tensile': '50',
  'virgin.bhkp.strength.tensile': '50',
  'virgin.bctmp.strength.tensile': '50',
};

describe('the quality of the routes, in the terminal', () => {
  it('shows what the water loop carries, and says that no strength is known', async () => {
    const { code, out } = await tonne(['quality', file]);

    expect(code).toBe(0);
    expect(out).toMatch(/Dissolved matter in the water loop +mg\/l +\d/u);
    expect(out).toContain('no strength of its lines is known');
    expect(out).not.toContain('Brightness');
  });

  it('shows a brightness beside the limit set for it, in the decimal mark of the person', async () => {
    const { out } = await tonne(['quality', file, ...set({ ...brightness, 'virgin.limit.brightness': '87.5' })], 'de');

    expect(out).toMatch(/Brightness of the stock +% +87 \(at least 87,5\)/u);
  });

  it('proposes a fifth more tonnes where an index of 60 is wanted and all lines have 50', async () => {
    const { out } = await tonne(['quality', file, ...set(tensile)]);

    expect(out).toMatch(/Tensile index of the furnish +N m\/g +50\b/u);
    expect(out).toMatch(/Tonnes for the same service, by strength +1\.2\b/u);
    expect(out).toContain('what strength asks for is only shown');
  });

  it('asks for what is missing once one brightness is given', async () => {
    const { code, err } = await tonne(['quality', file, ...set({ 'virgin.bskp.brightness': '87' })]);

    expect(code).toBe(1);
    expect(err).toContain('Brightness of its stock (virgin.bhkp.brightness) has no figure; give one in %.');
  });

  it('says the same as JSON', async () => {
    const { rows, service } = (await jsonOf(['quality', file, ...set(tensile)])) as {
      readonly rows: readonly {
        readonly label: string;
        readonly routes: readonly { readonly value: number | null }[];
      }[];
      readonly service: readonly unknown[];
    };

    const proposed = rows.find(({ label }) => label === 'Tonnes for the same service, by strength');
    expect(proposed?.routes.map(({ value }) => value)).toEqual([1.2, null]);
    expect(service).toEqual([
      { route: 'virgin', service: 'as given' },
      { route: 'recovered', service: 'as given' },
    ]);
  });
});
