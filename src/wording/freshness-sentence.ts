import { type FreshnessCaution, named } from '../study/trust/freshness-cautions.ts';
import { type DatedInput, amberAfter, factorYears } from '../study/trust/freshness.ts';
import { dayPhrase } from './day-phrase.ts';

/** What the dates of prices and factors leave in doubt. */
export function freshnessSentence(caution: FreshnessCaution): string {
  switch (caution.kind) {
    case 'old figure':
      return oldSentence(caution.input);
    case 'no date':
      return `No date is given for ${counted(caution.count, 'price')}, so nobody can tell how fresh ${caution.count === 1 ? 'it is' : 'they are'}: ${listed(caution.labels)}.`;
    case 'dates apart':
      return `Prices of pulp (${dayPhrase(caution.pulp)}) and of recovered paper (${dayPhrase(caution.recovered)}) lie more than ${monthsPhrase(Math.max(caution.months, 3))} apart: they are of different markets.`;
    case 'old factors':
      return `${counted(caution.count, 'carbon factor')} ${caution.count === 1 ? 'is' : 'are'} of more than ${String(factorYears)} years ago, the oldest of ${caution.oldest}; look whether a newer set has come out: ${listed(caution.labels)}.`;
  }
}

function oldSentence(input: DatedInput): string {
  const { kind, date, months, freshness } = input;
  const dated = `${named(input)}: price of ${dayPhrase(date)}`;
  if (freshness === 'ahead') return `${dated}, which is still to come.`;
  if (kind === 'tax or fee') return `${dated}; taxes and gate fees change with the year, so look it up again.`;
  const age = `${dated}, ${monthsPhrase(months ?? 0)} ago`;
  return freshness === 'red'
    ? `${age}: out of date. Nothing should rest on it before it is looked up again.`
    : `${age}; after ${monthsPhrase(amberAfter.case)} a price of its kind is looked up again.`;
}

function monthsPhrase(count: number): string {
  return `${String(count)} ${count === 1 ? 'month' : 'months'}`;
}

function counted(count: number, what: string): string {
  return `${String(count)} ${count === 1 ? what : `${what}s`}`;
}

const mostNamed = 4;

function listed(labels: readonly string[]): string {
  const named = labels.slice(0, mostNamed).join('; ');
  return labels.length > mostNamed ? `${named}; and ${String(labels.length - mostNamed)} more` : named;
}
