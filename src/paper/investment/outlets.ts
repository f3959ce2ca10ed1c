import { type Quantity, constant, isConstant } from '../../kernel/expression/quantity.ts';
import { type ByYear, eachYearOnce, sumOf } from './by-year.ts';
import { carbonCostOf } from './carbon-by-allocation.ts';
import { keptBy } from './kept-by.ts';
import { type OutletCost, outletCosts, outletGroups } from './outlet-cost.ts';
import { type SharesOfYear, sharesOfYears } from './outlet-shares.ts';
import type { PlanSheet } from './plan-sheet.ts';
import { priceGroups } from './price-group.ts';
import type { PriceOfYear } from './price-of-year.ts';
import type { Running } from './running.ts';

/** Years in which residues go the same ways. */
interface Period {
  readonly key: string;
  /** What the project saves a year by it, at today's prices; carbon apart. */
  readonly saved: readonly { readonly group: (typeof outletGroups)[number]; readonly money: Quantity }[];
  /** What it saves of carbon cost, with a free allocation over today's; null where nothing that is priced changes. */
  readonly carbon: (scale: Quantity | null) => Quantity | null;
}

/**
 * What the project saves besides in years in which residues go elsewhere than in the statements, in the money of the plan: a row of its own,
 * so that the saving stays what the statements say. Null in years that are as today. It follows the recovered stock made, as the lines do.
 */
export function outlets(sheet: PlanSheet, { made }: Running, priceOf: PriceOfYear, allocation: ByYear): ByYear {
  const shares = sharesByStream(sheet);
  const costs = { base: outletCosts(sheet, sheet.base), project: outletCosts(sheet, sheet.project) };
  let last: Period | null = null;
  const periodOf = (year: number): Period | null => {
    const now = [...shares].map(([stream, of]) => [stream, of(year)] as const);
    if (now.every(([, of]) => of === null)) return null;
    const key = now.map(([, of]) => String(of?.from ?? '')).join(' ');
    if (last?.key !== key) last = periodFrom(sheet, key, new Map(now), costs, year);
    return last;
  };
  return eachYearOnce((year) => {
    const period = year < sheet.plan.operatesFrom ? null : periodOf(year);
    if (period === null) return null;
    const priced = period.saved.map(({ group, money }) => {
      const price = priceOf(group)(year);
      return price === null ? money : money.times(price);
    });
    const [carbon, carbonPrice] = [period.carbon(allocation(year)), priceOf('carbon')(year)];
    const all = sumOf([...priced, carbonPrice === null ? carbon : (carbon?.times(carbonPrice) ?? null)]);
    return all === null ? null : sheet.inMoney(all.times(made(year)).times(constant('1', 'a')), year);
  });
}

/** A stream goes the same ways in both routes, so that its shares are written once. */
function sharesByStream(sheet: PlanSheet): ReadonlyMap<string, (year: number) => SharesOfYear | null> {
  const { base, project } = sheet;
  const streams = new Map([...base.residues, ...project.residues].map((residue) => [residue.stream, residue]));
  return new Map([...streams].map(([stream, residue]) => [stream, sharesOfYears(sheet, residue)]));
}

function periodFrom(
  sheet: PlanSheet,
  key: string,
  shares: ReadonlyMap<string, SharesOfYear | null>,
  costs: Readonly<Record<'base' | 'project', ReturnType<typeof outletCosts>>>,
  year: number,
): Period {
  const of = (stream: string): SharesOfYear | null => shares.get(stream) ?? null;
  const [base, project] = [costs.base(of), costs.project(of)];
  const from = String(Number(sheet.plan.start) + year);
  const saved = outletGroups.map((group) => {
    const label = priceGroups.find(({ id }) => id === group)?.label ?? group;
    return {
      group,
      money: sheet.sheet.define(
        `investment.outletSaved.${group}.${String(year)}`,
        `${label}, saved a year by other ways of residues from ${from}`,
        'EUR/a',
        base.money[group].minus(project.money[group]).times(sheet.mill.tonnes),
        {
          where: sheet.where,
          note: 'Base route less project: shares of the year less those of today, times what each place costs.',
        },
      ),
    };
  });
  return { key, saved, carbon: keptBy((scale: Quantity | null) => carbonSaved(sheet, base, project, scale)) };
}

/** Null where nothing that is priced changes. */
function carbonSaved(sheet: PlanSheet, base: OutletCost, project: OutletCost, scale: Quantity | null): Quantity | null {
  const more = (route: PlanSheet['base'], { priced }: OutletCost): Quantity =>
    isConstant(priced, '0')
      ? constant('0', `${sheet.sheet.case.currency}/a`)
      : carbonCostOf(sheet, route, { scale, more: priced }).minus(carbonCostOf(sheet, route, { scale }));
  const saved = more(sheet.base, base).minus(more(sheet.project, project));
  return isConstant(saved, '0') ? null : saved;
}
