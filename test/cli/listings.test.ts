import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { type InputView, caseText, restoreDefault } from '../../src/index.ts';
import { demonstration, valueOf } from '../examples/demonstration.ts';
import { temporaryFolder } from '../electron/temporary-folder.ts';
import { demonstrationFile as file, jsonOf, tonne } from './terminal.ts';

const { graph } = demonstration().model;

async function fileWithGap(): Promise<string> {
  const path = join(await temporaryFolder(), 'gap.tonne');
  await writeFile(path, caseText(valueOf(restoreDefault(demonstration(), 'product.tonnes'))));
  return path;
}

describe('inputs', () => {
  it('lists every input with figure, range, source and status, as JSON', async () => {
    const listed = (await jsonOf(['inputs', file])) as InputView[];

    expect(listed.map(({ id }) => id)).toEqual(graph.inputs.map(({ id }) => id));
    for (const { id, value, unit, status, source } of listed) {
      // Nobody has to say what the product sells for.
      const asked = ['product.price', 'product.contribution'].includes(id) ? [] : [value];
      expect([...asked, unit, status, source].includes(''), id).toBe(false);
    }
  });

  it('lists them as a table of one line each, and counts them', async () => {
    const { out } = await tonne(['inputs', file]);
    const lines = out.trimEnd().split('\n');

    expect(lines.length).toBe(graph.inputs.length + 4);
    expect(lines.find((line) => line.startsWith('product.tonnes '))).toMatch(/ 96000 +t\/year .* touched +invented /u);
    const touched = graph.inputs.filter(({ given }) => given !== null).length;
    expect(lines.at(-1)).toBe(`${String(graph.inputs.length)} inputs, ${String(touched)} of them touched.`);
  });
});

describe('explain', () => {
  it('opens a figure down to its inputs, each part once', async () => {
    const { code, out } = await tonne(['explain', file, 'virgin.cost.water.fresh']);

    expect(code).toBe(0);
    expect(out).toMatch(/^Fresh water \(Virgin middle ply\) = 2\.4 €\/t {3}\[virgin\.cost\.water\.fresh\]\n/u);
    expect(out).toMatch(/Input, 8 m³\/t\. Default\. \w+: .+\./u);
  });

  it('names a part that was opened before, and does not open it again', async () => {
    const { out } = await tonne(['explain', file, 'difference.total']);
    const opened = out.split('\n').flatMap((line) => / = .*\[([\w.-]+)\]$/u.exec(line)?.[1] ?? []);

    expect(new Set(opened).size).toBe(opened.length);
    expect(opened.length).toBeGreaterThan(300);
    expect(out).toContain('shown above   [');
  });

  it('opens the same parts as JSON, and every leaf is an input or a fixed number', async () => {
    interface Opened {
      readonly id: string;
      readonly words: string;
      readonly input: object | null;
      readonly shownAbove?: true;
      readonly parts?: readonly Opened[];
    }
    const visit = (node: Opened): void => {
      if (node.shownAbove === true) return;
      expect(node.input !== null || node.words !== '', node.id).toBe(true);
      node.parts?.forEach(visit);
    };
    visit((await jsonOf(['explain', file, 'recovered.cost.total'])) as Opened);
  });

  it('writes numbers in the format of the region', async () => {
    const { out } = await tonne(['explain', file, 'product.perHour'], 'de-DE');

    expect(out).toContain('96.000 ÷ 8.150');
    expect(out).toMatch(/= 11,779\d+ t\/h/u);
  });

  it('says of a carbon factor what decides whether it may stand beside another', async () => {
    const { out } = await tonne(['explain', file, 'carbon.fuelUpstream']);
    const given = ['explain', file, 'carbon.grid', '--set', 'carbon.grid=0.3', '--source', 'Study'];

    expect(out).toMatch(
      /Carbon factor; takes in fuel upstream; year \d{4}; allocation: none; warming potentials: AR5\.$/mu,
    );
    expect((await tonne(given)).out).toMatch(/: Study\..* Carbon factor; takes in generation of electricity\.$/mu);
  });

  it('of a figure that there is not ends with 1 and names what is near', async () => {
    const { code, out, err } = await tonne(['explain', file, 'virgin.cost.totl']);

    expect([code, out]).toEqual([1, '']);
    expect(err).toMatch(/^There is no figure "virgin\.cost\.totl" in this case; near to it are .*virgin\.cost\.total/u);
  });
});

describe('line', () => {
  it('prints every stage of a line, or of all lines of a route', async () => {
    const one = await tonne(['line', file, 'recovered', 'mixed']);
    const all = await tonne(['line', file, 'recovered']);

    expect(one.out).toContain('Recovered middle ply: Mixed papers and boards');
    expect(one.out).not.toContain('Recovered middle ply: Supermarket corrugated');
    expect(all.out).toContain(one.out.trimEnd());
    expect(all.out).toContain('Recovered middle ply: Supermarket corrugated');
  });

  it.each([
    { args: ['recoverd'], names: ['route "recoverd"', '"recovered"'] },
    { args: ['recovered', 'mixd'], names: ['line "mixd"', '"mixed"'] },
    { args: ['zzz'], names: ['route "zzz"', '"virgin"', '"recovered"'] },
  ])('refuses $args by name, and says what there is', async ({ args, names }) => {
    const { code, out, err } = await tonne(['line', file, ...args]);

    expect([code, out]).toEqual([1, '']);
    for (const name of names) expect(err).toContain(name);
    expect(err).toMatch(/^There is no [^\n]+\n$/u);
  });
});

describe('check', () => {
  it('names every law and what to look at', async () => {
    const { code, out } = await tonne(['check', file]);

    expect(code).toBe(0);
    expect(out.match(/^yes {2}/gmu)?.length).toBeGreaterThanOrEqual(4);
    expect(out).toContain('To look at:\n');
  });

  it('tells a missing figure once, with 1 for an exit code', async () => {
    const { code, out, err } = await tonne(['check', await fileWithGap()]);

    expect(code).toBe(1);
    expect(err).toBe('Saleable tonnes a year (product.tonnes) has no figure; give one in t/year (written t/a).\n');
    expect(out).not.toContain('Saleable tonnes a year');
  });
});

describe('a case with a missing figure', () => {
  it('is not compared, and its inputs are listed', async () => {
    const path = await fileWithGap();
    const compared = await tonne(['compare', path]);

    expect([compared.code, compared.out]).toEqual([1, '']);
    expect(compared.err).toContain('product.tonnes');
    expect((await tonne(['inputs', path])).code).toBe(0);
    expect((await tonne(['compare', path, '--set', 'product.tonnes=96000'])).code).toBe(0);
  });
});
