import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { demonstrationText } from '../examples/demonstration.ts';
import { temporaryFolder } from '../electron/temporary-folder.ts';
import { demonstrationFile as file, tonne } from './terminal.ts';

const stackTrace = /\n\s+at .*[:(]\d+/u;
const commands: readonly (readonly string[])[] = [
  ['compare', file],
  ['inputs', file],
  ['explain', file, 'virgin.cost.water.fresh'],
  ['footprint', file],
  ['line', file, 'recovered'],
  ['check', file],
];

describe('a command that is done', () => {
  it.each(commands.map((args) => ({ name: args[0], args })))(
    'ends with 0 and complains of nothing: $name',
    async ({ args }) => {
      const { code, out, err } = await tonne(args);

      expect([code, err]).toEqual([0, '']);
      expect(out.length).toBeGreaterThan(50);
      expect(out.endsWith('\n')).toBe(true);
    },
  );

  it.each([['--help'], ['help'], ['help', 'compare'], ['compare', '--help']])('is help too: %s %s', async (...args) => {
    const { code, out, err } = await tonne(args);

    expect([code, err]).toEqual([0, '']);
    expect(out).toContain('Usage: tonne');
  });
});

describe('a case that has problems ends every command with 1 and a sentence:', () => {
  const faults: { name: string; path: string; says: RegExp }[] = [];
  beforeAll(async () => {
    const folder = await mkdtemp(join(tmpdir(), 'tonne-'));
    const write = async (name: string, content: string | Uint8Array): Promise<string> => {
      await writeFile(join(folder, name), content);
      return join(folder, name);
    };
    await mkdir(join(folder, 'folder.tonne'));
    faults.push(
      {
        name: 'no file',
        path: join(folder, 'none.tonne'),
        says: /none\.tonne" cannot be read: there is no such file/u,
      },
      { name: 'a folder', path: join(folder, 'folder.tonne'), says: /folder\.tonne" cannot be read: it is a folder/u },
      { name: 'below a file', path: join(file, 'x.tonne'), says: /cannot be read: there is a file where a folder/u },
      { name: 'not JSON', path: await write('a.tonne', '{"format"'), says: /cannot be read as JSON/u },
      { name: 'another JSON', path: await write('b.tonne', '[1]'), says: /does not say that it is a case/u },
      { name: 'newer', path: await write('c.tonne', '{"format":"tonne","version":99}'), says: /format version 99/u },
      { name: 'Latin-1', path: await write('d.tonne', Uint8Array.of(0x7b, 0xfc, 0x7d)), says: /not text in UTF-8/u },
      { name: 'empty', path: await write('e.tonne', ''), says: /cannot be read as JSON/u },
    );
    return () => rm(folder, { recursive: true });
  });

  it.each(commands.map((args) => ({ name: args[0] ?? '', args })))('$name', async ({ name, args }) => {
    expect(faults).toHaveLength(8);
    for (const fault of faults) {
      const { code, out, err } = await tonne([name, fault.path, ...args.slice(2)]);

      expect(code, fault.name).toBe(1);
      expect(out, fault.name).toBe('');
      expect(err, fault.name).toMatch(fault.says);
      expect(err, fault.name).not.toMatch(stackTrace);
      expect(err.trim().split('\n'), fault.name).toHaveLength(1);
    }
  });
});

describe('a file with many mistakes', () => {
  it('is told with every one of them, a sentence to a line, on standard error', async () => {
    const path = join(await temporaryFolder(), 'mistakes.tonne');
    const content = JSON.parse(demonstrationText) as Record<string, unknown> & { inputs: Record<string, unknown> };
    const inputs = {
      ...content.inputs,
      'price.electricty': { value: '0.1', unit: 'EUR/kWh' },
      'price.fuel': { value: '12', unit: 'EUR/kWh' },
      'recovered.mixed.share': { value: '130', unit: '%' },
    };
    await writeFile(path, JSON.stringify({ ...content, inputs }));
    const { code, out, err } = await tonne(['compare', path]);

    expect([code, out]).toEqual([1, '']);
    const sentences = err.trim().split('\n');
    expect(sentences).toHaveLength(3);
    expect(err).toContain('There is no input "price.electricty" in this case; near to it are "price.electricity"');
    expect(err).toMatch(/\(price\.fuel\): "EUR\/kWh" is another kind of unit/u);
    expect(err).toMatch(/\(recovered\.mixed\.share\): 130 % was given; allowed is 0 to 100 %/u);
  });

  it('of form is told in the same way', async () => {
    const path = join(await temporaryFolder(), 'mistakes.tonne');
    const content = JSON.parse(demonstrationText) as object;
    await writeFile(path, JSON.stringify({ ...content, colour: 'red', currency: 'euro', priceYear: 2024 }));
    const { code, err } = await tonne(['check', path]);

    expect(code).toBe(1);
    expect(err.trim().split('\n')).toHaveLength(3);
    for (const name of ['colour', 'currency', 'priceYear']) expect(err).toContain(`"${name}"`);
  });
});

describe('a command that is used wrongly ends with 2', () => {
  it.each([
    { args: [], says: 'Usage: tonne' },
    { args: ['compute', file], says: "unknown command 'compute'" },
    { args: ['compare'], says: "missing required argument 'case'" },
    { args: ['explain', file], says: "missing required argument 'id'" },
    { args: ['line', file], says: "missing required argument 'route'" },
    { args: ['compare', file, 'more'], says: 'too many arguments' },
    { args: ['compare', file, '--colour'], says: "unknown option '--colour'" },
    { args: ['check', file, '--json'], says: "unknown option '--json'" },
    { args: ['compare', file, '--csv'], says: 'argument missing' },
    { args: ['compare', file, '--set'], says: 'argument missing' },
    { args: ['inputs', file, '--set', 'price.water'], says: '"price.water" has no "="' },
    { args: ['inputs', file, '--set', '=0.5'], says: '"=0.5" has no "="' },
  ])('$args', async ({ args, says }) => {
    const { code, out, err } = await tonne(args);

    expect(code).toBe(2);
    expect(out).toBe('');
    expect(err).toContain(says);
    expect(err).not.toMatch(stackTrace);
  });
});
