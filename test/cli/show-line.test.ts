import { describe, expect, it } from 'vitest';
import { type LineBalance, lineBalance, openCase } from '../../src/index.ts';
import { demonstrationText, valueOf } from '../examples/demonstration.ts';
import { demonstrationFile as file, jsonOf, tonne } from './terminal.ts';

const open = valueOf(openCase(demonstrationText));
const mixed = await tonne(['line', file, 'recovered', 'mixed']);
const rows = mixed.out.split('\n');
const rowOf = (start: string): string => rows.find((row) => row.startsWith(start)) ?? '';
const numbersIn = (row: string): number[] =>
  [...row.matchAll(/-?\d[\d,]*\.\d+/gu)].map(([text]) => Number(text.replaceAll(',', '')));

describe('line, printed', () => {
  it('heads the page with route, line, yields, feed and electricity', () => {
    const balance = lineBalance(open, 'recovered', 'mixed');

    expect(rows[0]).toBe('Recovered middle ply: Mixed papers and boards');
    expect(numbersIn(rows[1] ?? '')).toEqual([
      Number(((balance?.yield ?? NaN) * 100).toFixed(2)),
      Number(((balance?.fibreYield ?? NaN) * 100).toFixed(2)),
      Number((balance?.feed ?? NaN).toFixed(4)),
      Number((balance?.electricityPerFeed ?? NaN).toFixed(1)),
    ]);
  });

  it('gives each stage a row: what enters, what leaves, energy and where it goes', () => {
    expect(rowOf('vat pulper')).toMatch(/1,000\.00 .*Rope tail and bale wire \d+\.\d+; Heavy junk \d+\.\d+/u);
    for (const { label } of lineBalance(open, 'recovered', 'mixed')?.stages ?? [])
      expect(rowOf(label), label).not.toBe('');
  });

  it('closes every component that no stage turns into another, as printed', () => {
    for (const component of ['Film and foam', 'Sand, glass and metal', 'Bale wire', 'Macro-stickies']) {
      const [fed = NaN, ...found] = numbersIn(rowOf(component));
      // Rounded to three digits, in ten places at most.
      expect(Math.abs(found.reduce((sum, each) => sum + each, 0) - fed), component).toBeLessThan(0.006);
    }
  });

  it('opens every cascade, with its single stages', () => {
    expect(mixed.out.match(/^Inside .*, gross feed per unit fed to the cascade$/gmu)).toHaveLength(3);
    expect(mixed.out.match(/^stage 1 /gmu)).toHaveLength(3);
    expect(mixed.out).toContain('feed: Fibre and what follows it');
  });

  it('walks the line of a story, whose three screens all give back', async () => {
    const story = await tonne(['line', 'examples/stories/s10.tonne', 'first', 'paper']);

    expect(story.code).toBe(0);
    expect(story.out).toMatch(/^stage 3 /mu);
    expect(story.out).not.toContain('forward');
  });

  it('writes numbers in the format of the region', async () => {
    const german = await tonne(['line', file, 'recovered', 'mixed'], 'de-DE');

    expect(german.out).toContain('1.000,00');
    expect(german.out).not.toContain('1,000.00');
  });

  it('follows a figure given with --set', async () => {
    const { out } = await tonne([
      'line',
      file,
      'recovered',
      'mixed',
      '--set',
      'recovered.mixed.coarse.rejectRate=25 %',
    ]);

    expect(out).not.toBe(mixed.out);
    expect(out).toContain('25.00');
  });
});

describe('line --json', () => {
  it('is one balance for one line, with every stage, component and single stage', async () => {
    const balance = (await jsonOf(['line', file, 'recovered', 'mixed'])) as LineBalance;

    expect(balance).toEqual(JSON.parse(JSON.stringify(lineBalance(open, 'recovered', 'mixed'))));
    expect(Object.keys(balance)).toEqual([
      'route',
      'line',
      'label',
      'routeLabel',
      'yield',
      'fibreYield',
      'feed',
      'fed',
      'stages',
      'stock',
      'electricityPerFeed',
      'leavesTotal',
    ]);
    expect(balance.fed).toHaveLength(13);
  });

  it('is a list of balances for a whole route, in the order of its lines', async () => {
    const balances = (await jsonOf(['line', file, 'recovered'])) as LineBalance[];
    const lines = open.content.routes.find(({ id }) => id === 'recovered')?.lines.map(({ id }) => id);

    expect(balances.map(({ line }) => line)).toEqual(lines);
    expect(balances.map(({ route }) => route)).toEqual(lines?.map(() => 'recovered'));
  });
});

describe('line, used wrongly', () => {
  it.each([{ args: [] }, { args: ['recovered', 'mixed', 'more'] }, { args: ['recovered', '--pretty'] }])(
    'ends with 2: $args',
    async ({ args }) => {
      const { code, out, err } = await tonne(['line', file, ...args]);

      expect([code, out]).toEqual([2, '']);
      expect(err).toMatch(/^error: /u);
    },
  );

  it.each([
    { sets: 'recovered.mixed.coarse.rejectRate=100 %', said: 'allowed is more than 0 % and below 100 %' },
    { sets: 'recovered.mixed.coarse.quotient.lights=1.2', said: 'allowed is below 1' },
    { sets: 'recovered.mixed.coarse.consistency=0 %', said: 'allowed is more than 0 %' },
    { sets: 'recovered.mixed.share=120 %', said: 'allowed is 0 to 100 %' },
  ])('ends with 1 and a sentence where a figure cannot be: $sets', async ({ sets, said }) => {
    const { code, out, err } = await tonne(['line', file, 'recovered', 'mixed', '--set', sets]);

    expect([code, out]).toEqual([1, '']);
    expect(err).toContain(said);
  });

  it('never prints what cannot be worked out as a number', async () => {
    const contradiction = 'recovered.mixed.coarse.thickening=0.1';
    const { out } = await tonne(['line', file, 'recovered', 'mixed', '--set', contradiction]);
    const checked = await tonne(['check', file, '--set', contradiction]);

    expect(out).toContain('not yet');
    expect(out).not.toMatch(/NaN|Infinity/u);
    expect(checked.out + checked.err).toContain('Volume rejected');
  });

  it('names a file that is not there', async () => {
    const { code, err } = await tonne(['line', 'nowhere.tonne', 'recovered']);

    expect(code).toBe(1);
    expect(err).toContain('"nowhere.tonne" cannot be read');
  });
});
