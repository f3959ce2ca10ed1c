import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { InvestmentPlan } from '../../src/case/investment-plan.ts';
import { openCase } from '../../src/study/open-case.ts';
import { planResults } from '../../src/study/investment/plan-results.ts';
import { outletSentences, yearsListed } from '../../src/wording/plan-words.ts';

const mill = JSON.parse(readFileSync(new URL('../../examples/plan.tonne', import.meta.url), 'utf8')) as {
  readonly investment: InvestmentPlan;
  readonly inputs: object;
};

function sentences(plan: Partial<InvestmentPlan>, inputs: object = {}): readonly string[] {
  const read = openCase(
    JSON.stringify({ ...mill, investment: { ...mill.investment, ...plan }, inputs: { ...mill.inputs, ...inputs } }),
  );
  const results = read.ok ? planResults(read.value) : null;
  if (results === null) throw new Error('The plan was refused.');
  return outletSentences(results, 'en');
}

describe('years in words', () => {
  it.each([
    [[], ''],
    [['2030'], '2030'],
    [['2030', '2031'], '2030 and 2031'],
    [['2027', '2029', '2030', '2031', '2035'], '2027, 2029 to 2031 and 2035'],
  ])('%j are "%s"', (years, words) => {
    expect(yearsListed(years)).toBe(words);
  });
});

describe('outlets in words', () => {
  it('are silent where nothing changes', () => {
    expect(sentences({})).toEqual([]);
  });

  it('say from when to when each takes residues, and the shares that were given', () => {
    const outlets = [
      { destination: 'landfill', first: 0, last: 6 },
      { destination: 'boiler', first: 3, last: 15 },
    ];
    expect(sentences({ outlets }, { 'investment.residue.fine.to.boiler.5': { value: '40', unit: '%' } })).toEqual([
      'Landfill takes residues until 2031.',
      'Own boiler takes residues from 2028.',
      'Fine screen rejects: share to own boiler, 2030 and on: 40 %.',
    ]);
  });
});
