import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { demonstrationFile, tonne } from './terminal.ts';

const file = fileURLToPath(new URL('../../examples/machine.tonne', import.meta.url));
const line = (out: string, start: string): string =>
  (out.split('\n').find((each) => each.trim().startsWith(start)) ?? '').replaceAll(/\s+/gu, ' ').trim();

describe('compare', () => {
  it('shows the lines of the machine effect, and which view is in use', async () => {
    const { code, out } = await tonne(['compare', file]);

    expect(code).toBe(0);
    expect(line(out, 'The machine is sold out')).toContain('machine.soldOut is 1');
    for (const cause of ['Slower machine', 'Breaks and washes', 'Second quality', 'Heavier sheet'])
      expect(line(out, cause), cause).toMatch(/^\D+ [\d.]+ [\d.]+ \+[\d.]+ \+[\d.]+$/u);
    // 96 000 t x 1.2 % x 120 = 138 240 a year, 1.44 a tonne; 93 614.4 t x 2.7 % x 120 = 303 310.66, 3.16 a tonne.
    expect(line(out, 'Second quality')).toBe('Second quality 1.44 3.16 +1.72 +0.16');
  });

  it('turns to the other view by one switch', async () => {
    const { out } = await tonne(['compare', file, '--set', 'machine.soldOut=0']);

    expect(line(out, 'Orders limit the machine')).toContain('machine.soldOut is 0');
    // 8 000 x 0.015/0.985 h at 420 over 96 000 t.
    expect(line(out, 'Slower machine')).toBe('Slower machine 0.00 0.53 +0.53 +0.05');
  });

  it('says that none is entered', async () => {
    const { out } = await tonne(['compare', demonstrationFile]);
    expect(line(out, 'Machine effect')).toBe('Machine effect: none entered.');
  });

  it('refuses lost tonnes that nobody has priced, and a switch between its ends', async () => {
    const lost = ['--set', 'machine.soldOut=1', '--set', 'recovered.machine.speed=98'];
    const { code, err } = await tonne(['compare', demonstrationFile, ...lost]);

    expect(code).toBe(1);
    expect(err).toContain('Price of the product (product.price) has no figure');
    expect((await tonne(['compare', file, '--set', 'machine.soldOut=0.5'])).err).toContain('1 (sold out) or 0');
  });
});
