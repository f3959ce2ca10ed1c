import { describe, expect, it } from 'vitest';
import { demonstrationFile as file, planFile, tonne } from './terminal.ts';

interface Printed {
  readonly trials: number;
  readonly seed: number;
  readonly years: number;
  readonly belowNothing: { readonly share: number };
  readonly results: readonly { readonly id: string; readonly percentiles: readonly number[] }[];
}

describe('uncertainty', () => {
  it('prints as JSON what the case says is uncertain, drawn', async () => {
    const { code, out } = await tonne(['uncertainty', file, '--json']);
    const printed = JSON.parse(out) as Printed;

    expect(code).toBe(0);
    expect(printed).toMatchObject({ trials: 10_000, seed: 20_261, years: 10 });
    expect(printed.belowNothing.share).toBeGreaterThan(0.5);
    expect([...(printed.results[0]?.percentiles ?? [])].sort((a, b) => a - b)).toEqual(printed.results[0]?.percentiles);
  });

  it('takes other trials, seeds and years, and names them', async () => {
    const { out } = await tonne(['uncertainty', file, '--trials', '2000', '--seed', '5', '--years', '3']);

    expect(out).toMatch(/^2,000 trials, seed 5; mean of 3 years; 8 inputs drawn anew each year with 0\.7/u);
    expect(out).toMatch(/difference\.total is below 0 in \d+\.\d % of the trials/u);
    expect(out).toContain('Ash of the board, at most 8 %: broken by recovered');
  });

  it('tells the worst years of a plan beside its present value, as they stand in the JSON', async () => {
    const asked = ['uncertainty', planFile, '--result', 'investment.npv', '--trials', '2000'];
    const [{ code, out }, json] = [await tonne(asked), await tonne([...asked, '--json'])];
    const { worst } = JSON.parse(json.out) as {
      worst: { year: readonly number[]; three: readonly number[]; negative: number };
    };
    // Percentiles told are the 5th, 10th, 50th, 90th and 95th.
    const told = (values: readonly number[]): string =>
      [values[1], values[2]]
        .map((value, place) => {
          const digits = Number((value ?? NaN).toPrecision(6)).toLocaleString('en', { maximumFractionDigits: 6 });
          return `P${place === 0 ? '10' : '50'} ${digits.replace('-', '\u2212')} €`;
        })
        .join(', ');

    expect(code).toBe(0);
    expect(out).toContain(
      `Worst year of operation: ${told(worst.year)}; worst three running: ${told(worst.three)}; a year below nothing in ${(worst.negative * 100).toFixed(1)} % of the trials.`,
    );
  });

  it('says nothing of worst years where the result is no present value', async () => {
    const { out } = await tonne(['uncertainty', planFile, '--trials', '1000']);

    expect(out).toContain('difference.total is below 0');
    expect(out).not.toContain('Worst year');
  });

  it.each([
    ['--trials', '10', 'from 1000 to 1000000'],
    ['--years', '31', 'from 1 to 30'],
    ['--seed', '-1', 'from 0 to 4294967295'],
  ])('refuses %s %s and says what is allowed', async (option, given, allowed) => {
    const { code, err } = await tonne(['uncertainty', file, `${option}=${given}`]);

    expect(code).toBe(2);
    expect(err).toContain(allowed);
    expect(err).toContain(`"${given}" was given`);
  });
});

describe('scenarios', () => {
  it('stand side by side, with what they differ by from the case as it stands', async () => {
    const { code, out } = await tonne(['scenarios', file]);

    expect(code).toBe(0);
    expect(out).toContain('as the case stands (base)');
    expect(out).toContain('Pulp falls');
    // Power is not what falls in that scenario: its figure stands in brackets.
    expect(out).toMatch(/Electricity\s+€\/kWh\s+0\.118\s+\(0\.118\)/u);
  });
});

describe('limits', () => {
  it('stand beside what each route comes to, and say which of them binds', async () => {
    const { code, out } = await tonne(['limits', file]);

    expect(code).toBe(0);
    expect(out).toMatch(/Ash of the board\s+soft\s+Recovered middle ply\s+%\s+at most\s+8\s+7\.77708\s+yes/u);
    expect(out).toContain('at most 55.6 % within all limits; what binds is Ash of the board');
    expect(out).toContain('Virgin middle ply: its recovered share is fixed');
  });

  it('that are broken say so', async () => {
    const { out } = await tonne(['limits', file, '--set', 'recovered.mixed.share=38']);

    expect(out).toMatch(/Ash of the board\s+soft\s+Recovered middle ply.*NO/u);
  });
});

describe('table', () => {
  const sides = ['recovered.mixed.share=20..50/4', 'material.mixed.price=60..200/4'];

  it('marks cells that break a limit, and those that cannot be', async () => {
    const { out } = await tonne(['table', file, ...sides]);

    expect(out).toContain('cannot be');
    expect(out).toMatch(/! breaks a limit: Ash of the board/u);
  });

  it('names the limits of each cell in the JSON', async () => {
    const { out } = await tonne(['table', file, ...sides, '--json']);
    const { broken } = JSON.parse(out) as { broken: readonly (readonly (readonly string[])[])[] };

    expect(broken[0]?.map((each) => each.includes('ash'))).toEqual([false, false, true, false]);
  });
});

describe('compare', () => {
  it('says on what the difference rests', async () => {
    const { out } = await tonne(['compare', file]);

    expect(out).toMatch(/It rests on: measured \d+\u00a0%, sourced \d+\u00a0%, rule of thumb \d+\u00a0%/u);
  });
});
