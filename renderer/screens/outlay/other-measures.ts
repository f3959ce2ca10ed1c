import { unitLabel, type BreakEven, type PlanResults } from '../../../src/index.ts';
import { formatNumber } from '../../../src/wording/number-format.ts';
import type { NumberStyle } from '../../numbers/number-style.ts';
import { lowerFirst } from '../../numbers/letter-case.ts';
import { rateText } from './plan-sentences.ts';

/** A further measure of a plan: its name, what it comes to, and what is to be known of it. */
export interface OtherMeasure {
  readonly name: string;
  readonly text: string;
  readonly note: string;
}

/** Measures beside the five, each said plainly where there is none. */
export function otherMeasures(results: PlanResults, numbers: NumberStyle): readonly OtherMeasure[] {
  const { modified, index, levelised, rates, internal, plan, breakEvens } = results;
  const { locale, symbol } = numbers;
  const money = (value: number): string => formatNumber(value, { locale, decimals: 2 });
  const perTonne = `${symbol} a tonne`;
  return [
    ...(internal !== null && internal.rates.length > 1
      ? internal.rates.map(({ rate, isMeaningless }, place) => ({
          name: `Internal rate ${String(place + 1)} of ${String(internal.rates.length)}`,
          text: rateText(rate, locale),
          note: isMeaningless ? 'meaningless' : 'none of them ranks the plan',
        }))
      : []),
    {
      name: 'Modified rate of return',
      text: modified === null ? 'none' : Number.isFinite(modified) ? rateText(modified, locale) : 'not yet',
      note: `${plan.money}; money lent and put out at ${rateText(rates.used, locale)}`,
    },
    {
      name: 'Profitability index',
      text: index === null ? 'none' : formatNumber(index, { locale, decimals: 2 }),
      note: 'present value got for each 1 laid out',
    },
    {
      name: 'Levelised cost of the plan',
      text: `${money(levelised.cost)} ${perTonne}`,
      note: 'of all product; all but the saving',
    },
    {
      name: 'Levelised saving',
      text: `${money(levelised.saving)} ${perTonne}`,
      note: 'has to be larger than the cost, both before tax',
    },
    ...[breakEvens.tonnes, ...breakEvens.fibre].flatMap((found) =>
      found === null ? [] : [breakEvenMeasure(found, locale)],
    ),
  ];
}

function breakEvenMeasure(
  { label, where, unit, figure, from, to, crossings }: BreakEven,
  locale: string,
): OtherMeasure {
  const digits = (value: number): string => formatNumber(Number(value.toPrecision(4)), { locale });
  const now = `now ${digits(figure)}`;
  return {
    name: `Breaks even at: ${where === '' ? lowerFirst(label) : where}`,
    text: crossings.length === 0 ? 'nowhere' : `${crossings.map(digits).join(' and ')} ${unitLabel(unit)}`,
    note: crossings.length === 0 ? `${now}; none from ${digits(from)} to ${digits(to)}` : now,
  };
}
