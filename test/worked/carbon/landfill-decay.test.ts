import { describe, expect, test } from 'vitest';
import { constant } from '../../../src/kernel/expression/quantity.ts';
import { carbonFactor } from '../../../src/paper/carbon-factors.ts';
import { type Deposit, methaneInYear, methaneOfDeposit, methaneWithin } from '../../../src/paper/landfill-decay.ts';
import { plain, valueOf } from '../../support/quantity-value.ts';

interface Given {
  readonly carbon: string;
  readonly rate: string;
  readonly tonnes?: string;
  readonly recovered?: string;
}

/** The program's own fractions, with mass, carbon and rate as given. */
function deposit({ carbon, rate, tonnes = '1', recovered = '0' }: Given): Deposit {
  const share = (key: string) => plain(carbonFactor(`landfill.${key}`).value);
  return {
    mass: constant(tonnes, 't'),
    carbon: constant(carbon, 'tC/t'),
    decomposes: share('docf'),
    withoutAir: share('mcf'),
    methaneShare: share('f'),
    recovered: plain(recovered),
    oxidised: share('ox'),
    rate: constant(rate, '1/a'),
  };
}

const paper = deposit({ carbon: '0.40', rate: carbonFactor('landfill.k.boreal-temperate-wet').value });
const sludge = deposit({
  carbon: carbonFactor('landfill.us-doc-wet.sludge').value,
  rate: carbonFactor('landfill.us-k.sludge').value,
});
const general = deposit({
  carbon: carbonFactor('landfill.us-doc-wet.general').value,
  rate: carbonFactor('landfill.us-k.general').value,
});
const years = (count: number) => constant(String(count), 'a');

// Worked by hand from the first-order decay of "2006 IPCC Guidelines", IPCC, volume 5, chapter 3 (from memory), with its DOCf 0.5, MCF 1,
// F 0.5, OX 0.1 (from the "lfg-calc-py" data set, US EPA, 2025, Default_Landfill_Parameters) and no gas caught.
describe('methane of one tonne laid down', () => {
  // 1 t x 0.40 x 0.5 x 1 x 0.5 x 16/12 = 0.133333 t; x 0.9 = 120 kg; 1 - exp(-0.06) = 0.0582355.
  // Sludge: 0.12 gives 0.04 t and 36 kg; general waste: 0.15 gives 0.05 t and 45 kg.
  test.each([
    { what: 'paper', of: paper, all: '120.000', first: '6.98826', twenty: '83.8567', hundred: '119.7025' },
    { what: 'wet sludge', of: sludge, all: '36.000', first: '1.41158', twenty: '19.8242', hundred: '35.3406' },
    { what: 'general waste', of: general, all: '45.000', first: '1.32995', twenty: '20.3035', hundred: '42.7596' },
  ])('of $what: $all kg over all time, $first kg in the first year', ({ of, all, first, twenty, hundred }) => {
    expect(valueOf(methaneOfDeposit(of)).toFixed(3)).toBe(all);
    expect(valueOf(methaneInYear(of, years(1))).toFixed(5)).toBe(first);
    expect(valueOf(methaneWithin(of, years(20))).toFixed(4)).toBe(twenty);
    expect(valueOf(methaneWithin(of, years(100))).toFixed(4)).toBe(hundred);
  });

  test('adds up year by year to what is let out within those years', () => {
    let sum = 0;
    for (let year = 1; year <= 30; year += 1) sum += valueOf(methaneInYear(paper, years(year)));

    expect(sum).toBeCloseTo(valueOf(methaneWithin(paper, years(30))), 10);
    expect(valueOf(methaneWithin(paper, years(1)))).toBeCloseTo(valueOf(methaneInYear(paper, years(1))), 12);
  });

  test('is less by what is caught, before what the cover oxidises', () => {
    // 0.133333 t x (1 - 0.65) x (1 - 0.1) = 42 kg.
    const caught = deposit({ carbon: '0.40', rate: '0.06', recovered: '0.65' });

    expect(valueOf(methaneOfDeposit(caught))).toBeCloseTo(42, 10);
  });

  test('in kilograms of CO2: 3360 by the fifth report, 3240 by the sixth', () => {
    const inCarbon = (set: string) =>
      valueOf(methaneOfDeposit(paper).times(constant(carbonFactor(`gwp.${set}.methane`).value, 'kgCO2e/kgCH4')));

    expect(inCarbon('ar5')).toBeCloseTo(3360, 9);
    expect(inCarbon('ar6')).toBeCloseTo(3240, 9);
  });

  test('with two thirds of the gas caught would be the British factor for paper, 35 % of all of it', () => {
    // Source: paper and board to landfill, 1164.4894 kgCO2e/t, "UK Government GHG Conversion Factors for Company Reporting 2025", DESNZ,
    // waste disposal; by a potential of 28 that is 41.6 kg of methane.
    const british = 1164.4894 / Number(carbonFactor('gwp.ar5.methane').value);

    expect(british.toFixed(1)).toBe('41.6');
    expect((british / valueOf(methaneOfDeposit(paper))).toFixed(2)).toBe('0.35');
  });
});

// Source of the inputs: example of "lfg-calc-py", US EPA, 2025: 100,000 t, half food and half corrugated, dry, DOC 0.17, k 0.072 and
// 0.01. Worked by hand: 50,000 t x 0.17 x 0.5 x 0.5 x 16/12 x 0.9 = 2550 t each.
test.each([
  { what: 'food', rate: '0.072', first: '177.1462', hundred: '2548.10' },
  { what: 'corrugated', rate: '0.01', first: '25.3729', hundred: '1611.91' },
])('fifty thousand tonnes of $what let out 2550 t, $first t of it in the first year', ({ rate, first, hundred }) => {
  const half = deposit({ carbon: '0.17', rate, tonnes: '50000' });

  expect(valueOf(methaneOfDeposit(half)) / 1000).toBeCloseTo(2550, 8);
  expect((valueOf(methaneInYear(half, years(1))) / 1000).toFixed(4)).toBe(first);
  expect((valueOf(methaneWithin(half, years(100))) / 1000).toFixed(2)).toBe(hundred);
});

// Source: "Environmental Engineering", solutions to chapter 13: a half-life of 10 years is k 0.0693 and 33 years to nine tenths of the gas;
// one of 3 years is k 0.231 and 10 years.
test.each([
  { halfLife: 10, rate: '0.0693', ninety: 33 },
  { halfLife: 3, rate: '0.231', ninety: 10 },
])('at $rate a year half the gas is gone after $halfLife years and nine tenths after $ninety', (example) => {
  const slow = deposit({ carbon: '0.40', rate: example.rate });
  const share = (count: number) => valueOf(methaneWithin(slow, years(count))) / valueOf(methaneOfDeposit(slow));

  expect(share(example.halfLife)).toBeCloseTo(0.5, 3);
  expect(share(example.ninety)).toBeCloseTo(0.9, 2);
});

// Source: "2006 IPCC Guidelines", volume 5, table 3.3, as transcribed in "lfg-calc-py", US EPA, 2025: paper in a boreal or temperate climate,
// dry 0.04 and wet 0.06 a year, half-lives of 17 and 12 years.
test.each([
  { climate: 'boreal-temperate-dry', rate: '0.04', halfLife: '17.3' },
  { climate: 'boreal-temperate-wet', rate: '0.06', halfLife: '11.6' },
  { climate: 'tropical-dry', rate: '0.045', halfLife: '15.4' },
  { climate: 'tropical-wet', rate: '0.07', halfLife: '9.9' },
])('paper in a $climate landfill decays by half in $halfLife years', ({ climate, rate, halfLife }) => {
  const { value } = carbonFactor(`landfill.k.${climate}`);

  expect(value).toBe(rate);
  expect((Math.LN2 / Number(value)).toFixed(1)).toBe(halfLife);
});

// Source: 40 CFR part 98, table TT-1 to subpart TT, US EPA, text of 2024: pulp and paper sludge 0.12 (k 0.02, 0.04, 0.06), other pulp and paper
// waste not told apart 0.15 (k 0.02, 0.03, 0.04); carbon per wet tonne.
test.each([
  { waste: 'sludge', carbon: '0.12', rates: ['0.02', '0.04', '0.06'] },
  { waste: 'general', carbon: '0.15', rates: ['0.02', '0.03', '0.04'] },
])('$waste carries the carbon and the rates of the US rule', ({ waste, carbon, rates }) => {
  const { low, value, high } = carbonFactor(`landfill.us-k.${waste}`);

  expect(carbonFactor(`landfill.us-doc-wet.${waste}`)).toMatchObject({ value: carbon, unit: 'tC/wet-t' });
  expect([low, value, high]).toEqual(rates);
});
