import type { CapitalItem, InvestmentPlan, OutletYears, Support } from '../../../src/index.ts';
import { newId } from '../what-if/lower/new-id.ts';

const longestLabel = 200;
const latestOperation = 10;

/** Changes of what there is in a plan. Each gives the plan as it would be; figures stand apart from it, among the inputs. */
export function withItem(plan: InvestmentPlan, label: string): InvestmentPlan {
  const id = newId(
    label,
    'item',
    plan.items.map((item) => item.id),
  );
  return { ...plan, items: [...plan.items, { id, label }] };
}

/** A name that is empty is no name: the old one stays. */
export function withItemNamed(plan: InvestmentPlan, id: string, label: string): InvestmentPlan {
  return { ...plan, items: named(plan.items, id, label) };
}

export function withoutItem(plan: InvestmentPlan, id: string): InvestmentPlan {
  return { ...plan, items: plan.items.filter((item) => item.id !== id) };
}

/** Money from others: a grant comes in the first year of building, a credit in all years of operation, until somebody says otherwise. */
export function withSupport(plan: InvestmentPlan, kind: Support['kind'], label: string): InvestmentPlan {
  const supports = plan.supports ?? [];
  const id = newId(
    label,
    kind,
    supports.map((support) => support.id),
  );
  const [first, last] = kind === 'grant' ? [0, 0] : [plan.operatesFrom, plan.years];
  return { ...plan, supports: [...supports, { id, label, kind, first, last }] };
}

export function withSupportChanged(
  plan: InvestmentPlan,
  id: string,
  change: Partial<Pick<Support, 'label' | 'first' | 'last'>>,
): InvestmentPlan {
  const supports = (plan.supports ?? []).map((support) => (support.id === id ? changed(support, change) : support));
  return { ...plan, supports };
}

export function withoutSupport(plan: InvestmentPlan, id: string): InvestmentPlan {
  const { supports = [], ...rest } = plan;
  const left = supports.filter((support) => support.id !== id);
  return left.length === 0 ? rest : { ...rest, supports: left };
}

/** A destination that is open in all years stands in no list. Whichever year is moved past the other takes it along. */
export function withOutletYears(
  plan: InvestmentPlan,
  destination: string,
  change: Partial<Pick<OutletYears, 'first' | 'last'>>,
): InvestmentPlan {
  const { outlets = [], ...rest } = plan;
  const now = outlets.find((each) => each.destination === destination) ?? { destination, first: 0, last: plan.years };
  const first = change.first ?? Math.min(now.first, change.last ?? now.first);
  const last = change.last ?? Math.max(now.last, first);
  const others = outlets.filter((each) => each.destination !== destination);
  const isAlways = first === 0 && last === plan.years;
  const left = isAlways ? others : [...others, { destination, first, last }];
  return left.length === 0 ? rest : { ...rest, outlets: left };
}

/** A plan of other length keeps what still lies within it; what lasted to its end still does. */
export function withYears(plan: InvestmentPlan, years: number): InvestmentPlan {
  const within = (year: number): number => Math.min(year, years);
  const { outlets = [], ...rest } = plan;
  const kept = outlets
    .map((each) => ({ ...each, first: within(each.first), last: each.last === plan.years ? years : within(each.last) }))
    .filter(({ first, last }) => first > 0 || last < years);
  return {
    ...rest,
    ...(kept.length === 0 ? {} : { outlets: kept }),
    years,
    operatesFrom: within(plan.operatesFrom),
    ...(plan.supports === undefined
      ? {}
      : { supports: plan.supports.map((each) => ({ ...each, first: within(each.first), last: within(each.last) })) }),
  };
}

/** Years in which a line may begin to run, counted from year 0. */
export function operationYears(plan: InvestmentPlan): readonly number[] {
  return Array.from({ length: Math.min(latestOperation, plan.years) + 1 }, (_, year) => year);
}

/** Years in which the first money may be spent: some before the prices are of, and a generation after. */
export function startYears({ start }: InvestmentPlan, priceYear: string): readonly number[] {
  const first = Math.min(Number(start), Number(priceYear) - 5);
  const last = Math.max(Number(start), Number(priceYear) + 25);
  return Array.from({ length: last - first + 1 }, (_, place) => first + place);
}

/** "" says no class. */
export function withEstimateClass(plan: InvestmentPlan, given: string): InvestmentPlan {
  const { estimateClass: _before, ...rest } = plan;
  const found = estimateClasses.find(({ value }) => value === given)?.value;
  return found === undefined ? rest : { ...rest, estimateClass: found };
}

/** How far an estimate is worked out, roughest first. */
export const estimateClasses = [
  { value: '5', label: 'class 5: an idea, roughest' },
  { value: '4', label: 'class 4: a study, rough' },
  { value: '3', label: 'class 3: first design, middling' },
  { value: '2', label: 'class 2: design done, near' },
  { value: '1', label: 'class 1: checked tenders, nearest' },
] as const;

function named(items: readonly CapitalItem[], id: string, label: string): readonly CapitalItem[] {
  const tidy = label.trim().slice(0, longestLabel);
  return tidy === '' ? items : items.map((item) => (item.id === id ? { ...item, label: tidy } : item));
}

/** Whichever end is moved past the other takes it along. */
function changed(support: Support, change: Partial<Pick<Support, 'label' | 'first' | 'last'>>): Support {
  const label = change.label?.trim().slice(0, longestLabel) ?? '';
  const first = change.first ?? Math.min(support.first, change.last ?? support.first);
  const last = change.last ?? Math.max(support.last, first);
  return { ...support, label: label === '' ? support.label : label, first, last };
}
