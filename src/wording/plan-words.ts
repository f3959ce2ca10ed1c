import type { PlanResults } from '../study/investment/plan-results.ts';
import { formatNumber } from './number-format.ts';

/** Outlets that are not open in all years of the plan, and shares given for years, one sentence each. */
export function outletSentences({ plan, calendar, residues }: PlanResults, locale: string): readonly string[] {
  const year = (place: number): string => calendar[place] ?? '';
  const times = (plan.outlets ?? []).map(({ destination, first, last }) => {
    const label = residues.destinations.find(({ id }) => id === destination)?.label ?? destination;
    const from = first === 0 ? '' : ` from ${year(first)}`;
    const until = last === plan.years ? '' : ` until ${year(last)}`;
    return `${label} takes residues${from}${until === '' && from === '' ? ' in all years' : until}.`;
  });
  const shares = residues.shares.map(
    ({ label, percent }) => `${label} and on: ${formatNumber(percent, { locale })} %.`,
  );
  return [...times, ...shares];
}

/** That a saving was typed is never silent. */
export function typedSentences({ typedSavings: { instead, beside } }: PlanResults): readonly string[] {
  return [
    ...(instead.length === 0
      ? []
      : [`The saving of ${yearsListed(instead)} was typed, in place of what the statements save.`]),
    ...(beside.length === 0 ? [] : [`A further saving was typed for ${yearsListed(beside)}.`]),
  ];
}

/** "2027, 2029 to 2032 and 2035". */
export function yearsListed(years: readonly string[]): string {
  const runs: string[][] = [];
  for (const year of years) {
    const run = runs.at(-1);
    if (run !== undefined && Number(year) === Number(run.at(-1)) + 1) run.push(year);
    else runs.push([year]);
  }
  const words = runs.flatMap((run) => (run.length < 3 ? run : [`${run[0] ?? ''} to ${run.at(-1) ?? ''}`]));
  return words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words.at(-1) ?? ''}`;
}
