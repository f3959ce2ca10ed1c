import { chanceText } from '../../wording/chance-text.ts';
import { formatNumber } from '../../wording/number-format.ts';
import { rateWords } from '../../wording/plan-verdict.ts';
import { type Markup, element } from './markup.ts';
import type { PaperFacts, PlanFacts } from './paper-facts.ts';
import { currencySymbol } from './paper-words.ts';

/** Four figures large enough to be read across a table: those of the plan, or of the difference where there is no plan. */
export function figuresStrip(facts: PaperFacts, locale: string): Markup {
  const figures = facts.plan === null ? ofDifference(facts, locale) : ofPlan(facts, facts.plan, locale);
  return element(
    'section',
    { class: 'four' },
    figures.map(({ figure, unit, says }) =>
      element('div', {}, element('b', {}, figure, ' ', element('small', {}, unit)), element('span', {}, says)),
    ),
  );
}

interface LargeFigure {
  readonly figure: string;
  readonly unit: string;
  readonly says: string;
}

function ofPlan({ spread }: PaperFacts, { results, trials }: PlanFacts, locale: string): readonly LargeFigure[] {
  const { npv, rates, internal, payback, plan } = results;
  const rate = internal?.rates.length === 1 ? internal.rates[0]?.rate : undefined;
  const number = (value: number): string => formatNumber(value, { locale, decimals: 1 });
  const price = `${formatNumber(rates.used * 100, { locale, significant: 3 })} % ${plan.money}`;
  return [
    {
      figure: number(npv / 1e6),
      unit: `${currencySymbol(spread.currency, locale)} million`,
      says: `net present value, ${price}, before financing`,
    },
    rate === undefined
      ? { figure: String(internal?.rates.length ?? 0), unit: 'rates', says: rateWords(results, locale) }
      : { figure: number(rate * 100), unit: '%', says: `internal rate of return, ${plan.money}, after tax` },
    payback === null
      ? { figure: 'none', unit: '', says: 'payback within the plan' }
      : { figure: number(payback), unit: 'years', says: 'payback from first money' },
    { figure: chanceText(1 - trials.belowNothing.share, locale), unit: 'in 100', says: 'trials end above zero' },
  ];
}

function ofDifference({ spread, trials, footprint }: PaperFacts, locale: string): readonly LargeFigure[] {
  const { difference, currency, with: other } = spread;
  const signed = (digits: string): string => formatNumber(digits, { locale, decimals: 2, sign: true });
  return [
    {
      figure: signed(difference.shownPerTonne),
      unit: `${currencySymbol(currency, locale)}/t`,
      says: `“${other.label}” less “${spread.base.label}”`,
    },
    { figure: signed(difference.shownPerYear), unit: `${currencySymbol(currency, locale)} million`, says: 'a year' },
    {
      figure: chanceText(trials.belowNothing.share, locale),
      unit: 'in 100',
      says: `trials in which “${other.label}” costs less`,
    },
    {
      figure: formatNumber(footprint.difference.total, { locale, decimals: 0, sign: true }),
      unit: 'kg CO2e/t',
      says: 'difference in carbon, cradle to mill gate',
    },
  ];
}
