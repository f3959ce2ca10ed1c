import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { temporaryFolder } from '../electron/temporary-folder.ts';
import { demonstrationFile as file, jsonOf, tonne } from './terminal.ts';

async function rows(text: string): Promise<string> {
  const path = join(await temporaryFolder(), 'months.csv');
  await writeFile(path, text);
  return path;
}

describe("a mill's own months, in the terminal", () => {
  it('stand in a table with what each comes to, and a sentence says how often recovered was cheaper', async () => {
    const points = await rows('Month,Pulp,Mixed\n2024-01,780,104\n2024-02,300,190\n');
    const { code, out } = await tonne(['months', file, '--points', points]);

    expect(code).toBe(0);
    expect(out).toMatch(/2024-01 +780 +104 +−\d/u);
    expect(out).toMatch(/Recovered was cheaper in \d of 2 months; virgin in \d\.\n$/u);
  });

  it('come to the difference of the case at the prices of the case', async () => {
    const listed = (await jsonOf(['inputs', file])) as readonly { readonly id: string; readonly value: string }[];
    const valueOf = (id: string): string => listed.find((input) => input.id === id)?.value ?? '';
    const { pulp, recovered } = (await jsonOf(['months', file, '--points', await rows('now;1;1')])) as {
      readonly pulp: string;
      readonly recovered: string;
    };
    const points = await rows(`now;${valueOf(pulp)};${valueOf(recovered)}`);
    const found = (await jsonOf(['months', file, '--points', points])) as {
      readonly months: readonly { readonly value: number }[];
      readonly below: number;
    };
    const { difference } = (await jsonOf(['compare', file])) as { readonly difference: { readonly perTonne: number } };

    expect(found.months[0]?.value).toBeCloseTo(difference.perTonne, 9);
    expect(found.below).toBe(1);
  });

  it('are read with the decimal mark of the person', async () => {
    const points = await rows('Januar;780,50;104\n');
    const { out } = await tonne(['months', file, '--points', points], 'de');

    expect(out).toMatch(/Januar +780,5 +104/u);
  });

  it('are refused as a whole where a row is none, with every such row told', async () => {
    const { code, out, err } = await tonne(['months', file, '--points', await rows('a;1;2\nb;1\nc;x;3\n')]);

    expect([code, out]).toEqual([1, '']);
    expect(err).toContain('Row 2 (“b;1”) has 2 cells');
    expect(err).toContain('Row 3 (“c;x;3”): the pulp price “x” is not a number.');
  });

  it('can be of other prices', async () => {
    const args = ['--points', await rows('a;700;90'), '--pulp', 'material.bhkp.price'];
    const { pulp } = (await jsonOf(['months', file, ...args])) as { readonly pulp: string };

    expect(pulp).toBe('material.bhkp.price');
    expect((await tonne(['months', file, ...args, '--recovered', 'material.bhkp.price'])).err).toContain(
      'allowed is another input than "pulp"',
    );
  });

  it('are asked for where the case holds none', async () => {
    const { code, err } = await tonne(['months', file]);

    expect(code).toBe(2);
    expect(err).toContain('This case holds no months. Give a file of rows with --points');
  });
});
