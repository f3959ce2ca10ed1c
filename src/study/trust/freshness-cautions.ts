import { isLonger, monthsBetween } from '../../case/day.ts';
import type { OpenCase } from '../open-case.ts';
import { type DatedInput, datedInputs } from './freshness.ts';

/** Beyond this the two fibre prices are of different markets. Common practice, no source. */
const mostApart = 3;

/** What a reader must know about the dates of prices and factors. */
export type FreshnessCaution =
  | { readonly kind: 'old figure'; readonly about: string; readonly input: DatedInput }
  | {
      readonly kind: 'old factors';
      readonly about: string;
      readonly count: number;
      /** Year of the oldest. */
      readonly oldest: string;
      readonly labels: readonly string[];
    }
  | { readonly kind: 'no date'; readonly about: string; readonly count: number; readonly labels: readonly string[] }
  | {
      readonly kind: 'dates apart';
      readonly about: string;
      readonly pulp: string;
      readonly recovered: string;
      readonly months: number;
    };

export function freshnessCautions(open: OpenCase, today: string | null): readonly FreshnessCaution[] {
  const inputs = datedInputs(open, today);
  const prices = inputs.filter(({ kind }) => kind !== 'emission factor');
  return [
    ...prices
      .filter(({ freshness }) => ['amber', 'red', 'ahead'].includes(freshness))
      .map((input) => ({ kind: 'old figure', about: input.id, input }) as const),
    ...undated(prices),
    ...apart(prices),
    ...oldFactors(inputs.filter(({ kind, freshness }) => kind === 'emission factor' && freshness === 'amber')),
  ];
}

function undated(prices: readonly DatedInput[]): readonly FreshnessCaution[] {
  const without = prices.filter(({ freshness }) => freshness === 'no date');
  const [first] = without;
  return first === undefined
    ? []
    : [{ kind: 'no date', about: first.id, count: without.length, labels: without.map(named) }];
}

/** The widest step between a price of pulp and one of recovered paper. */
function apart(prices: readonly DatedInput[]): readonly FreshnessCaution[] {
  const of = (kind: DatedInput['kind']): readonly DatedInput[] =>
    prices.filter((each) => each.kind === kind && each.date !== '').toSorted((a, b) => (a.date < b.date ? -1 : 1));
  const [pulps, papers] = [of('pulp'), of('recovered paper')];
  const pairs = [
    [pulps[0], papers.at(-1)],
    [pulps.at(-1), papers[0]],
  ] as const;
  const found = pairs.flatMap(([pulp, paper]): readonly Extract<FreshnessCaution, { kind: 'dates apart' }>[] => {
    if (pulp === undefined || paper === undefined) return [];
    const [early, late] = pulp.date < paper.date ? [pulp.date, paper.date] : [paper.date, pulp.date];
    const months = monthsBetween(early, late);
    return isLonger(early, late, mostApart)
      ? [{ kind: 'dates apart', about: pulp.id, pulp: pulp.date, recovered: paper.date, months }]
      : [];
  });
  return found.toSorted((a, b) => b.months - a.months).slice(0, 1);
}

function oldFactors(factors: readonly DatedInput[]): readonly FreshnessCaution[] {
  const [oldest] = factors.toSorted((a, b) => Number(a.date) - Number(b.date));
  if (oldest === undefined) return [];
  return [
    { kind: 'old factors', about: oldest.id, count: factors.length, oldest: oldest.date, labels: factors.map(named) },
  ];
}

/** A fibre is known by its own name; what its price is called adds nothing. */
export function named({ label, where, kind }: DatedInput): string {
  if (kind === 'pulp' || kind === 'recovered paper') return where;
  return where === '' ? label : `${label} (${where})`;
}
