import { inSentence } from '../../wording/in-sentence.ts';
import { conditionPhrase, headlined } from '../../wording/condition-phrase.ts';
import { formatNumber } from '../../wording/number-format.ts';
import { unitLabel } from '../../wording/unit-label.ts';
import { chanceText } from '../../wording/chance-text.ts';
import { ownSwings } from './own-swings.ts';
import type { PaperFacts } from './paper-facts.ts';
import { currencySymbol, listText, moneyText, significantText } from './paper-words.ts';

/** The sentence the page is made for: which route costs less, by how much, a tonne and a year. */
export function decision({ spread, comparison }: PaperFacts, locale: string): string {
  const { base, with: other, difference, currency } = spread;
  if (difference.shownPerTonne === '') return 'The difference between the two routes cannot be worked out yet.';
  const apart = Number(difference.shownPerTonne);
  const { name } = comparison.product;
  if (apart === 0) return `A tonne of ${name} costs the same by “${other.label}” as by “${base.label}”, to the cent.`;
  const [dearer, cheaper] = apart < 0 ? [base, other] : [other, base];
  const perTonne = moneyText(Math.abs(apart), currency, locale);
  const perYear = moneyText(Math.abs(Number(difference.shownPerYear)), currency, locale);
  return `A tonne of ${name} costs ${perTonne} less by “${cheaper.label}” than by “${dearer.label}”: ${perYear} million a year.`;
}

/** On what it rests: the same product, how many trials agree, and what would turn it. */
export function terms(facts: PaperFacts, locale: string): string {
  const { spread, trials } = facts;
  const apart = spread.difference.perTonne;
  const share = apart <= 0 ? trials.belowNothing.share : 1 - trials.belowNothing.share;
  const whose = trials.isUsual ? 'with inputs over their usual ranges' : 'of what the case says is uncertain';
  const holds = `it holds in ${chanceText(share, locale)} of 100 trials ${whose}`;
  const sentence = apart === 0 ? conditionPhrase(spread) : headlined(spread, holds);
  return [sentence === '' ? '' : `${sentence}.`, turning(facts, locale)].filter((part) => part !== '').join(' ');
}

const mostNamed = 2;

function turning(facts: PaperFacts, locale: string): string {
  const { ties, spread } = facts;
  const flips = new Set(
    ownSwings(facts)
      .filter((swing) => swing.flips)
      .map(({ id }) => id),
  );
  const named = ties.flatMap(({ id, label, where, unit, figure, crossings }) => {
    const nearest = [...crossings].sort((a, b) => Math.abs(a - figure) - Math.abs(b - figure))[0];
    if (nearest === undefined || !flips.has(id)) return [];
    const moves = nearest > figure ? 'rises above' : 'falls below';
    const place = where === '' ? '' : ` (${where})`;
    return [`${inSentence(label)}${place} ${moves} ${significantText(nearest, locale)} ${unitLabel(unit)}`.trimEnd()];
  });
  const subject = spread.difference.perTonne === 0 ? 'It turns' : 'It stops holding';
  if (named.length === 0) return 'No single input turns it within its usual range.';
  return `${subject} if ${listText(named.slice(0, mostNamed)).replace(' and ', ' or if ')}, ${named.length === 1 ? 'inside its' : 'each inside its'} usual range.`;
}

/** "P10 and P90 in words": one trial in ten is better than the one, one in ten worse than the other. */
export function spreadOfTrials({ trials, spread }: PaperFacts, locale: string): string {
  const [, low, , high] = trials.results[0]?.percentiles ?? [];
  if (low === undefined || high === undefined) return '';
  const text = (value: number): string => formatNumber(value, { locale, decimals: 0, sign: true });
  const symbol = currencySymbol(spread.currency, locale);
  return `In one trial in ten the difference lies below ${text(low)} ${symbol}/t, in one in ten above ${text(high)}.`;
}
