import { describe, expect, test } from 'vitest';
import { sameProductQuestions } from '../../src/case/same-product.ts';
import {
  type OpenCase,
  changeInput,
  compare,
  editStructure,
  footprint,
  npvId,
  openCase,
  planResults,
  restoreDefault,
  sensitivity,
  spreadOf,
} from '../../src/index.ts';
import { statementCsv } from '../../src/report/statement-csv.ts';
import { statementPage } from '../../src/report/statement-page.ts';
import { workOut } from '../../src/study/open-case.ts';
import { uncertainty } from '../../src/study/uncertainty/uncertainty.ts';
import { planVerdict } from '../../src/wording/plan-verdict.ts';
import { workbookPlan } from '../../src/workbook/workbook-plan.ts';
import planText from '../../examples/plan.tonne?raw';
import { jsonOf, planFile, tonne } from '../cli/terminal.ts';
import { demonstration, problemsOf, valueOf } from '../examples/demonstration.ts';
import { evaluated } from '../support/evaluation.ts';
import { smallCase } from '../support/small-case.ts';

const open = demonstration();
const plan = valueOf(openCase(planText));
const slush = [{ id: 'slush', like: 'pumps' }];

/** All that leaves the program about a comparison, as text. */
function printed(from: OpenCase): { readonly page: string; readonly csv: string; readonly workbook: string } {
  const [comparison, spread] = [compare(from), spreadOf(from, '2026-11-25')];
  return {
    page: statementPage(comparison, spread, 'en'),
    csv: statementCsv(comparison, spread, 'en'),
    workbook: JSON.stringify(workbookPlan(from, { today: '2026-11-25', trials: null, pictures: [] })),
  };
}

describe('wet against dry', () => {
  // By hand: 120 a tonne as received is 120/0.9 = 133.33 a bone-dry tonne at 10 % moisture and 120/0.8 = 150 at 20 %.
  test('paper with more water in it costs more a bone-dry tonne at the same price', () => {
    const at = (moisture: string): string =>
      evaluated(
        smallCase({
          stages: slush,
          figures: { 'material.paper.price': '120 EUR/t-ar', 'material.paper.moisture': moisture },
        }),
      )
        .number('material.paper.cost')
        .toFixed(2);

    expect(at('10 %')).toBe('133.33');
    expect(at('20 %')).toBe('150.00');
  });

  test('a price by the bone-dry tonne is not taken for one as received', () => {
    expect(problemsOf(changeInput(open, 'material.mixed.price', '120 EUR/bdt'))).toMatchObject([
      { kind: 'wrong unit', given: 'EUR/bdt', wanted: 'EUR/t-ar' },
    ]);
  });

  // By hand: 0.25 bdt of rejects at 40 % dryness is 0.625 wet t, 31.25 at 50 a wet tonne and not 12.50.
  test('residues are hauled and charged with their water', () => {
    const mill = evaluated(
      smallCase({
        stages: [{ id: 'reject', like: 'pumps' }],
        figures: {
          'mill.line.reject.removal.fibre': '20 %',
          'residue.coarse.dryness': '40 %',
          'destination.tip.haulage': '0 EUR/wet-t',
          'destination.tip.gateFee': '50 EUR/wet-t',
        },
      }),
    );

    expect(mill.number('mill.cost.residues.coarse')).toBeCloseTo(31.25, 10);
  });

  test('a fee by the dry tonne is not taken for one by the wet', () => {
    expect(problemsOf(changeInput(open, 'destination.landfill.gateFee', '50 EUR/bdt'))[0].kind).toBe('wrong unit');
  });
});

// By hand, 600 in bales 92 % dry: 600/0.92; 600/0.9; 600; 600/(0.90718474 x 0.9).
describe('the air-dry, the bone-dry and the short ton', () => {
  test.each([
    { basis: 'as received', unit: 'EUR/t-ar', cost: '652.174' },
    { basis: 'air-dry', unit: 'EUR/adt', cost: '666.667' },
    { basis: 'bone-dry', unit: 'EUR/bdt', cost: '600.000' },
    { basis: 'air-dry', unit: 'EUR/adst', cost: '734.874' },
  ] as const)('make $cost of 600 in $unit', ({ basis, unit, cost }) => {
    const mill = evaluated(
      smallCase({
        stages: slush,
        materials: [{ price: { basis, kind: 'net' } }],
        figures: { 'material.paper.price': `600 ${unit}`, 'material.paper.moisture': '8 %' },
      }),
    );

    expect(mill.number('material.paper.cost').toFixed(3)).toBe(cost);
  });

  test.each(['600 EUR/ton', '600 EUR per ton', '600 EUR/tons'])(
    'are asked about where somebody types "%s"',
    (typed) => {
      expect(problemsOf(changeInput(open, 'material.bskp.price', typed))).toMatchObject([{ kind: 'which ton' }]);
    },
  );
});

describe('a list price against a net one', () => {
  const terms = { basis: 'air-dry', kind: 'list' } as const;
  const listed = valueOf(editStructure(open, { kind: 'set price terms', material: 'bskp', terms }));
  const sentence = 'Bleached softwood kraft: a list price without a discount.';

  test('is cautioned about on the page, in the CSV and in the workbook', () => {
    for (const text of Object.values(printed(listed))) expect(text).toContain(sentence);
  });

  test('is not cautioned about once the discount is entered, nor where the price is net', () => {
    const discounted = valueOf(changeInput(listed, 'material.bskp.discount', '20 %'));

    for (const text of [...Object.values(printed(discounted)), ...Object.values(printed(open))])
      expect(text).not.toContain(sentence);
  });

  test('takes its discount off: 20 % less', () => {
    const discounted = valueOf(changeInput(listed, 'material.bskp.discount', '20 %'));

    expect(discounted.values.number('material.bskp.cost') / listed.values.number('material.bskp.cost')).toBeCloseTo(
      0.8,
      12,
    );
  });
});

describe('different products', () => {
  const answered = (reply: 'yes' | 'no', last: 'yes' | 'no', from = open): OpenCase =>
    sameProductQuestions.reduce(
      (before, question) =>
        valueOf(
          editStructure(before, {
            kind: 'answer same product',
            base: 'virgin',
            with: 'recovered',
            question,
            answer: { reply: question === 'customer' ? last : reply },
          }),
        ),
      from,
    );
  const verdictOf = (from: OpenCase): string =>
    planVerdict(planResults(from)!, { swings: [], trials: null }, from.content.currency, 'en');

  test('are never told as the same: every headline says that it is not confirmed', async () => {
    const condition = 'If both make the same product (not confirmed)';

    expect(printed(open).page).toContain(`${condition}, Recovered middle ply costs 60.36 EUR a tonne less`);
    expect(printed(open).csv).toContain(condition);
    expect(printed(open).workbook).toContain(condition);
    expect(await jsonOf(['compare', 'examples/demonstration.tonne'])).toMatchObject({ condition });
    expect(await jsonOf(['invest', planFile])).toMatchObject({ condition });
    expect(verdictOf(plan)).toContain('if both make the same product (not confirmed)');
  });

  test('are named by the question that was answered no', () => {
    const denied = 'both make the same product (answered no: customer approval)';

    for (const text of Object.values(printed(answered('yes', 'no')))) expect(text).toContain(denied);
    expect(verdictOf(answered('yes', 'no', plan))).toContain(denied);
  });

  test('are no condition any more once all five are answered yes, and not before', () => {
    const confirmed = printed(answered('yes', 'yes'));

    for (const text of Object.values(confirmed)) expect(text).not.toContain('same product');
    expect(confirmed.page).toContain('\nRecovered middle ply costs 60.36 EUR a tonne less');
    expect(verdictOf(answered('yes', 'yes', plan))).not.toContain('same product');
  });
});

describe('the perfect machine', () => {
  const remark = 'Machine effect: none entered.';
  // The demonstration's routes hold very different shares of recovered fibre, and nobody has said what that does to the machine.
  test('is remarked on in everything that leaves the program', () => {
    const { page, csv, workbook } = printed(open);

    for (const text of [page, csv, workbook]) expect(text).toContain(remark);
  });

  test('is no longer remarked on once somebody says what the furnish does to it', () => {
    const figures = [
      ['machine.soldOut', '1'],
      ['product.price', '890'],
      ['recovered.machine.speed', '98'],
    ] as const;
    const said = figures.reduce(
      (from, [id, typed]) => valueOf(changeInput(from, id, typed, { source: 'Invented' })),
      open,
    );

    expect(printed(said).page).not.toContain(remark);
    // A machine that is sold out and 2 % slower makes 1,920 t less of 96,000: that is money, and the difference moves by it.
    expect(compare(said).difference.perTonne).toBeGreaterThan(compare(open).difference.perTonne);
  });
});

describe('the same money twice', () => {
  test('a plan takes the place of the capital charge: the statement charges none while there is one', () => {
    const without = valueOf(editStructure(plan, { kind: 'set investment', plan: null }));

    expect(plan.values.number('recovered.cost.capital')).toBe(0);
    expect(without.values.number('recovered.cost.capital')).toBeGreaterThan(1);
    expect(printed(plan).page).toContain('Before the capital of the plan, if both make the same product');
  });

  // By hand: 0.25 bdt of rejects, half dry, is 0.5 wet t: haulage of 2 stays whole, and 30 of the sale stand once, as a credit.
  test('what a residue sells for is a credit and takes nothing off its line', () => {
    const sold = (price: string) =>
      evaluated(
        smallCase({
          stages: [{ id: 'reject', like: 'pumps' }],
          destinations: [{ id: 'merchant', label: 'Merchant', kind: 'sale' }],
          figures: {
            'mill.line.reject.removal.fibre': '20 %',
            'residue.coarse.dryness': '50 %',
            'destination.merchant.haulage': '4 EUR/wet-t',
            'destination.merchant.gateFee': '0 EUR/wet-t',
            'destination.merchant.sale': price,
          },
        }),
      );
    const [given, paid] = [sold('0 EUR/wet-t'), sold('60 EUR/wet-t')];

    expect(paid.number('mill.cost.residues.coarse')).toBe(given.number('mill.cost.residues.coarse'));
    expect(paid.number('mill.cost.total') - given.number('mill.cost.total')).toBeCloseTo(-30, 10);
  });

  // By hand: 0.25 bdt of fibre at 16 GJ/bdt, half dry: 0.25 x 16 - 2.443 x 0.25 = 3.38925 GJ a tonne. At half a tonne of rejects for a
  // tonne of stock, 1 bdt of them: 16 - 2.443 = 13.557 GJ, more than any mill here needs.
  test('heat of residues is a credit of what it replaces: the heat line stays whole, and no more is credited than is needed', () => {
    const burning = evaluated(
      smallCase({
        stages: [{ id: 'reject', like: 'pumps' }],
        destinations: [
          { id: 'tip', label: 'Tip', kind: 'gate-fee plant' },
          { id: 'boiler', label: 'Own boiler', kind: 'own boiler' },
        ],
        figures: {
          'mill.line.reject.removal.fibre': '20 %',
          'residue.coarse.dryness': '50 %',
          'residue.coarse.to.boiler': '100 %',
          'destination.boiler.efficiency': '100 %',
        },
      }),
    );
    const tipped = burning.withChanges({ 'residue.coarse.to.boiler': '0' });
    const [heat, needed] = [burning.number('mill.heat.fromResidues'), burning.number('mill.heat.total')];

    expect(burning.number('mill.residue.coarse.heat')).toBeCloseTo(3.38925, 10);
    expect(needed).toBeGreaterThan(3.38925);
    expect(heat).toBeCloseTo(3.38925, 10);
    const plenty = burning.withChanges({ 'mill.line.reject.removal.fibre': '50' });
    expect(plenty.number('mill.residue.coarse.heat')).toBeCloseTo(13.557, 10);
    expect(plenty.number('mill.heat.fromResidues')).toBe(plenty.number('mill.heat.total'));
    expect(burning.number('mill.cost.heat')).toBe(tipped.number('mill.cost.heat'));
    expect(burning.number('mill.cost.credits.energy')).toBeCloseTo(-10 * heat, 10);
  });
});

describe('carbon boundaries that move', () => {
  const give = (more: object) =>
    changeInput(open, 'material.mixed.carbon', '20', { status: 'read', source: 'Invented table, 2026', ...more });

  test('a factor that takes in something else is refused by name', () => {
    expect(problemsOf(give({ boundary: 'cradle to gate' }))).toMatchObject([
      { kind: 'wrong boundary', given: 'cradle to gate', wanted: 'collection and sorting' },
    ]);
    expect(give({ boundary: 'collection and sorting' }).ok).toBe(true);
  });

  test('a closed-loop factor, which holds the recycling mill, is not taken for collection', () => {
    expect(problemsOf(give({ allocation: 'closed loop' }))).toMatchObject([
      { kind: 'wrong allocation', given: 'closed loop', wanted: 'cut-off' },
    ]);
  });

  test('a factor without a source is not taken at all, and the rule of allocation is named with the result', async () => {
    expect(problemsOf(changeInput(open, 'material.mixed.carbon', '20'))).toMatchObject([{ kind: 'no source' }]);
    expect(footprint(open).basis.allocation).toBe('cut-off');
    expect((await tonne(['footprint', 'examples/demonstration.tonne'])).out).toContain('cut-off');
  });
});

describe('real against nominal', () => {
  // Fisher by hand: 1.10/1.025 - 1 = 7.317073 %; over ten years a factor of 0.144471 and not the 0.162745 of 10 %.
  test('capital is charged at the real rate, for prices stay those of one year', () => {
    const mill = evaluated(
      smallCase({
        stages: slush,
        route: { capital: 'annual charge' },
        figures: {
          'mill.capital': '40000000 EUR',
          'mill.capitalLife': '10 a',
          'capital.rate': '10 %',
          'capital.inflation': '2.5 %',
        },
      }),
    );

    expect(mill.number('mill.capitalFactor').toFixed(6)).toBe('0.144471');
  });

  test('a plan says in which money it is told and which rate it uses', () => {
    const told = (money: 'real' | 'nominal'): string => {
      const inflated = valueOf(changeInput(plan, 'capital.inflation', '2.5 %'));
      const from = valueOf(
        editStructure(inflated, { kind: 'set investment', plan: { ...plan.content.investment!, money } }),
      );
      const results = planResults(from)!;
      expect(results.rates.used).toBeCloseTo(
        money === 'real' ? (1 + results.rates.nominal) / 1.025 - 1 : results.rates.nominal,
        12,
      );
      return planVerdict(results, { swings: [], trials: null }, 'EUR', 'en');
    };

    expect(told('real')).toContain('Real terms, in money of 2024');
    expect(told('nominal')).toContain('Nominal terms, in the money of each year');
  });

  test('inflation of nothing, which makes the two the same, is said aloud', () => {
    const still = valueOf(changeInput(plan, 'capital.inflation', '0 %'));
    const verdict = planVerdict(planResults(still)!, { swings: [], trials: null }, 'EUR', 'en');

    expect(verdict).toContain('General inflation is nothing, so real and nominal are the same.');
  });
});

describe('averages that hide the bad year', () => {
  const trials = uncertainty(plan, npvId, { trials: 2000 });
  const verdict = planVerdict(planResults(plan)!, { swings: [], trials }, 'EUR', 'en');

  test('the verdict on a plan tells the worst year beside the present value', () => {
    const [, tenth] = trials.worst!.year;

    expect(verdict).toContain(
      `Its worst year of operation brings less than ${(tenth! / 1e6).toFixed(1).replace('-', '\u2212')} million EUR in one trial of ten`,
    );
  });

  test('the worst year is worse than the mean of the years', () => {
    const { flows, plan: years } = planResults(plan)!;
    const running = flows.slice(years.operatesFrom);
    const mean = running.reduce((sum, flow) => sum + flow, 0) / running.length;

    // P50 over the trials: even half way up, a trial's worst year lies below what the plan brings on average.
    expect(trials.worst!.year[2]).toBeLessThan(mean);
  });
});

describe('rules of thumb printed as facts', () => {
  test('the page says how much of the answer is measured, sourced and rule of thumb', async () => {
    const { out } = await tonne(['compare', 'examples/demonstration.tonne']);

    expect(out).toMatch(/It rests on: measured [\d.]+\u00a0%, sourced [\d.]+\u00a0%, rule of thumb [\d.]+\u00a0%/u);
  });

  test('an input without a range of its own moves by 20 %, apart from the others, and never in the verdict', () => {
    const { judged, conventional } = sensitivity(plan, npvId);
    const verdict = planVerdict(planResults(plan)!, { swings: judged, trials: null }, 'EUR', 'en');
    const named = new Set(judged.map(({ id }) => id));

    expect(conventional.length).toBeGreaterThan(0);
    expect(conventional.filter(({ id }) => named.has(id))).toEqual([]);
    expect(verdict).toContain('each within its usual range');
  });

  test('a default that is common practice says so, and is not called measured', async () => {
    const inputs = (await jsonOf(['inputs', 'examples/demonstration.tonne'])) as {
      id: string;
      status: string;
      source: string;
    }[];
    const practice = inputs.filter(({ status }) => status === 'practice');

    expect(practice.length).toBeGreaterThan(50);
    expect(practice.filter(({ source }) => !source.startsWith('Common practice'))).toEqual([]);
  });

  test('an old price is said to be old in all that prints, and one without a date to have none', () => {
    const edit = { kind: 'date input', input: 'material.bskp.price', date: '2025-10-01' } as const;
    const old = printed(valueOf(editStructure(open, edit)));

    for (const text of Object.values(old)) {
      expect(text).toContain('Bleached softwood kraft: price of 1 October 2025, 13 months ago: out of date.');
      expect(text).toContain('No date is given for');
    }
  });

  test('a figure measured far from the computed one is told in all that prints', () => {
    const actual = { result: 'virgin.electricity.total', value: '700', unit: 'kWh/t', period: '2025' };
    const told = printed(valueOf(editStructure(open, { kind: 'put actual', actual })));

    // By hand: 927.1 computed against 700 is 32.4 % more.
    for (const text of Object.values(told))
      expect(text).toContain('32.4 % above what was measured. Nothing was fitted.');
  });
});

test('a case that misses a figure has no headline to mislead with', () => {
  const gap = valueOf(restoreDefault(open, 'recovered.mixed.share'));

  expect(spreadOf(gap).difference.shownPerTonne).toBe('');
  expect(printed(gap).page).toContain('The difference cannot be worked out yet.');
  expect(workOut(gap.content).ok).toBe(true);
});
