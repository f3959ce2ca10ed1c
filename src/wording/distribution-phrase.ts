import type { Distribution } from '../kernel/random/distribution.ts';
import { formatNumber } from './number-format.ts';

/** How an input is drawn, in words: "triangular, 60 to 230, most likely 104". Figures in the entry unit of the input. */
export function distributionPhrase(distribution: Distribution, locale: string): string {
  const number = (value: number): string => formatNumber(value, { locale, significant: 6 });
  switch (distribution.kind) {
    case 'uniform':
      return `uniform, ${number(distribution.low)} to ${number(distribution.high)}`;
    case 'triangular':
    case 'PERT':
      return `${distribution.kind}, ${number(distribution.low)} to ${number(distribution.high)}, most likely ${number(distribution.mode)}`;
    case 'normal':
    case 'lognormal':
      return `${distribution.kind}, mean ${number(distribution.mean)}, deviation ${number(distribution.deviation)}${cut(distribution, number)}`;
    case 'discrete':
      return `one of ${distribution.values.map(({ value, weight }) => `${number(value)} (weight ${number(weight)})`).join(', ')}`;
  }
}

function cut(
  { low, high }: { readonly low: number; readonly high: number },
  number: (value: number) => string,
): string {
  const ends = [
    Number.isFinite(low) ? `not below ${number(low)}` : '',
    Number.isFinite(high) ? `not above ${number(high)}` : '',
  ].filter((end) => end !== '');
  return ends.length === 0 ? '' : `, ${ends.join(' and ')}`;
}
