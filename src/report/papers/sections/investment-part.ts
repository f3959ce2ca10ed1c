import { formatNumber } from '../../../wording/number-format.ts';
import { millions, planVerdict } from '../../../wording/plan-verdict.ts';
import { type Markup, element } from '../markup.ts';
import type { PaperFacts } from '../paper-facts.ts';
import { part } from '../part.ts';
import { type Row, ruledTable } from '../ruled-table.ts';

// So many years stand on one sheet beside the names of the rows.
const yearsAcross = 9;

/** The investment plan year by year, with its verdict; null where the case has none. */
export function investmentPart({ plan, spread }: PaperFacts, locale: string): Markup | null {
  if (plan === null) return null;
  const { results, swings, trials } = plan;
  const verdict = planVerdict(results, { swings: swings.judged, trials }, spread.currency, locale);
  const rows = [
    ...results.rows
      .filter(({ values }) => values.some((value) => value !== 0))
      .map(({ label, values }) => ({ label, values })),
    { label: 'Cash flow', values: results.flows, role: 'group' as const },
    { label: 'So far', values: results.cumulative },
    { label: 'Discounted so far', values: results.discounted },
  ];
  const starts = results.calendar.flatMap((_, year) => (year % yearsAcross === 0 ? [year] : []));
  const tables = starts.map((start) => {
    const years = results.calendar.slice(start, start + yearsAcross);
    const columns = [`million ${spread.currency}`, ...years].map(
      (head, place) => ({ head, holds: place === 0 ? 'words' : 'figures' }) as const,
    );
    const body = rows.map(({ label, values, ...rest }): Row => ({
      ...rest,
      cells: [label, ...values.slice(start, start + yearsAcross).map((value) => millions(value, locale, 2))],
    }));
    return ruledTable(columns, body, `The plan from ${years[0] ?? ''} to ${years.at(-1) ?? ''}`);
  });
  const { rates } = results;
  const share = (value: number): string => `${formatNumber(value * 100, { locale, significant: 4 })} %`;
  const terms = `${results.plan.money}, ${share(rates.used)} a year (${share(rates.nominal)} nominal, ${share(rates.inflation)} inflation), before financing`;
  return part('Investment', terms, element('p', {}, verdict), tables);
}
