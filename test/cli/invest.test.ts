import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { projectRoot } from '../../build/lib/project-root.mjs';
import { demonstrationFile, tonne } from './terminal.ts';

const plan = join(projectRoot, 'examples/plan.tonne');

describe('invest', () => {
  it('says in one paragraph what is invested, what it returns, how sure that is, and what would undo it', async () => {
    const { code, out } = await tonne(['invest', plan]);

    expect(code).toBe(0);
    expect(out).toMatch(
      /^To change from Virgin middle ply to Recovered middle ply takes 41\.3 million EUR of capital/u,
    );
    expect(out).toMatch(/At 5\.88 % real \(8\.00 % nominal\) it returns 38\.7 million EUR more than it costs/u);
    expect(out).toMatch(/its internal rate of return is 16\.96 %/u);
    expect(out).toMatch(/it ends above nothing in 88 of 100; half of them end below 1\d\.\d million EUR/u);
    expect(out).toMatch(/What could undo it, each within its usual range: Net price agreed/u);
    expect(out).toContain('before financing');
    expect(out).toContain('Capital stands in this plan and not in the statement.');
  });

  it('prints every flow as JSON, and the same present value in nominal terms', async () => {
    const { out } = await tonne(['invest', plan, '--json']);
    const printed = JSON.parse(out) as { flows: readonly number[]; npv: number; rates: { used: number } };

    const discounted = printed.flows.reduce((sum, flow, year) => sum + flow / (1 + printed.rates.used) ** year, 0);
    expect(printed.flows).toHaveLength(16);
    expect(discounted).toBeCloseTo(printed.npv, 2);
  });

  it('says that a case has no plan', async () => {
    const { code, err } = await tonne(['invest', demonstrationFile]);

    expect([code, err]).toEqual([1, 'This case has no investment plan.\n']);
  });

  it('takes figures of the plan as it takes all others', async () => {
    const { out } = await tonne(['invest', plan, '--set', 'investment.contingency=40', '--json']);

    expect((JSON.parse(out) as { outlay: number }).outlay / 1e6).toBeCloseTo(35.6 * 1.4, 9);
  });

  it('reaches savings, tonnes, shares and ramps of single years, and names what was typed', async () => {
    const sets = [
      'investment.savingInstead.6=9500000',
      'investment.margin=110',
      'investment.moreTonnes=-2000',
      'investment.residue.fine.to.boiler.5=40 %',
      'investment.ramp.4=95',
      'investment.estimate=110',
    ].flatMap((set) => ['--set', set]);
    const { code, out } = await tonne(['invest', plan, ...sets]);

    expect(code).toBe(0);
    expect(out).toContain('The saving of 2031 was typed, in place of what the statements save.');
    expect(out).toMatch(/^Tonnes gained or lost +0\.00 +0\.00 +\u22120\.22/mu);
    expect(out).toMatch(/^Residue outlets /mu);
    expect(out).toContain('Fine screen rejects: share to own boiler, 2030 and on: 40 %.');
    expect(out).toContain('takes 45.4 million EUR of capital');
  });

  it('asks for the margin of tonnes that are gained or lost', async () => {
    const { code, err } = await tonne(['invest', plan, '--set', 'investment.moreTonnes=-2000']);

    expect(code).toBe(1);
    expect(err).toMatch(/Margin on a tonne gained or lost \(investment\.margin\) has no figure/u);
  });
});
