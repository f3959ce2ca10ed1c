import { describe, expect, it } from 'vitest';
import { type Footprint, footprint, openCase, publicClaimCaution } from '../../src/index.ts';
import { demonstrationText, valueOf } from '../examples/demonstration.ts';
import { demonstrationFile as file, jsonOf, tonne } from './terminal.ts';

const open = valueOf(openCase(demonstrationText));
const found = footprint(open);
const printed = await tonne(['footprint', file]);
const rows = printed.out.split('\n');
const rowOf = (start: string): string => rows.find((row) => row.startsWith(start)) ?? '';

type Told = Footprint & { readonly warnings: readonly { sentence: string; about: string }[]; readonly caution: string };

describe('footprint, printed', () => {
  it('names its basis, its rule and its warming potentials', () => {
    expect(printed.code).toBe(0);
    expect(rows[0]).toMatch(
      /kg CO2e a tonne, from cradle to mill gate by the cut-off rule; GWP of AR5, 100 years\. An estimate\./u,
    );
  });

  it('gives the scopes, their causes and their sum for each route, and what differs', () => {
    const [virgin, recovered] = found.routes.map(({ total }) => total.toFixed(1).replace(/\B(?=(\d{3})+\.)/gu, ','));

    for (const scope of ['scope 1', 'scope 2', 'scope 3']) expect(rowOf(scope)).not.toBe('');
    expect(rowOf('All three')).toContain(virgin);
    expect(rowOf('All three')).toContain(recovered);
    for (const { label, scope } of found.routes[0]?.causes ?? []) expect(printed.out, scope).toContain(`  ${label}`);
  });

  it('sets methane in three columns of time, biogenic CO2, recycled content, wood and water beside', () => {
    for (const start of [
      'Landfill methane, all time',
      'Landfill methane, 20 years',
      'Landfill methane, first year',
      'Biogenic CO2, kg, not summed',
      'Recycled content (ISO 14021), %',
      '  as it may be printed, %',
      'Wood, ',
      'Fresh water, ',
      'Effluent, ',
    ])
      expect(rowOf(start), start).not.toBe('');
  });

  it('names every factor with year, status and source', () => {
    const grid = rows.find((row) => row.includes('Grid electricity, average by location')) ?? '';

    expect(grid).not.toBe('');
    for (const factor of found.routes.flatMap(({ causes }) => causes.flatMap(({ factors }) => factors)))
      expect(printed.out, factor.id).toContain(factor.label);
  });

  it('ends with the caution on public claims and with whom the grid data are owed to', () => {
    expect(printed.out).toContain(publicClaimCaution);
    expect(printed.out.trimEnd().endsWith(found.basis.attribution)).toBe(true);
  });

  it('says what the pack may say', async () => {
    const { out } = await tonne(['footprint', 'examples/stories/s7.tonne']);

    expect(out).toMatch(/^Recycled content \(ISO 14021\), % +70\.4 +70\.4/mu);
    expect(out).toMatch(/^ {2}as it may be printed, % +70 +70/mu);
  });
});

describe('footprint --json', () => {
  it('holds all that the study tells, with warnings and the caution', async () => {
    const { warnings, caution, ...rest } = (await jsonOf(['footprint', file])) as Told;

    expect(rest).toEqual(JSON.parse(JSON.stringify(found)));
    expect(caution).toBe(publicClaimCaution);
    expect(warnings.length).toBeGreaterThan(0);
    for (const { sentence, about } of warnings)
      expect([sentence === '', open.values.has(about)]).toEqual([false, true]);
  });

  it('adds up by scope and by cause in what it writes', async () => {
    const { routes } = (await jsonOf(['footprint', file])) as Told;

    for (const { id, total, scopes, causes } of routes) {
      const sum = (amounts: readonly { amount: number }[]): number =>
        amounts.reduce((before, { amount }) => before + amount, 0);
      expect(Math.abs(sum(scopes) - total), id).toBeLessThan(1e-9 * total);
      expect(Math.abs(sum(causes) - total), id).toBeLessThan(1e-9 * total);
    }
  });

  it('follows a figure given with --set', async () => {
    const { routes } = (await jsonOf(['footprint', file, '--set', 'recovered.mixed.share=0 %'])) as Told;

    expect(routes[1]?.recycled.content).toBeLessThan(found.routes[1]?.recycled.content ?? NaN);
  });
});

describe('a factor given with --set', () => {
  const set = ['footprint', file, '--set', 'carbon.grid=0.3'];

  it('is refused by name where nothing says where it comes from', async () => {
    const { code, out, err } = await tonne(set);

    expect([code, out]).toEqual([1, '']);
    expect(err).toContain('carbon.grid');
    expect(err).toContain('must name its source');
  });

  it('stands beside its cause with the source that is named for it', async () => {
    const { code, out } = await tonne([...set, '--source', 'Supplier, 2026']);

    expect(code).toBe(0);
    expect(out).toMatch(/^Grid electricity, average by location +0\.3 .*Supplier, 2026/mu);
  });
});

describe('footprint, used wrongly', () => {
  it.each([{ args: [] }, { args: [file, 'recovered'] }, { args: [file, '--pretty'] }])(
    'ends with 2: $args',
    async ({ args }) => {
      const { code, out, err } = await tonne(['footprint', ...args]);

      expect([code, out]).toEqual([2, '']);
      expect(err).toMatch(/^error: /u);
    },
  );

  it('ends with 1 and a sentence where shares add up to more than the whole', async () => {
    const { code, out, err } = await tonne([
      'footprint',
      file,
      '--set',
      'recovered.mixed.share=70',
      '--set',
      'recovered.bskp.share=50',
    ]);

    expect([code, out]).toEqual([1, '']);
    expect(err).toContain('cannot be worked out');
    expect(err).not.toContain('NaN');
  });
});
