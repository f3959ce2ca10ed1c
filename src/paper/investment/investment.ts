import { type Quantity, constant, total } from '../../kernel/expression/quantity.ts';
import { eachYearOnce, sumOf } from './by-year.ts';
import { allocationOfYears } from './carbon-by-allocation.ts';
import { capitalOf, supportOf, unitOf } from './capital.ts';
import { moreTonnes } from './more-tonnes.ts';
import { outlets } from './outlets.ts';
import { type PlanSheet, planInput } from './plan-sheet.ts';
import { pricesOfYears } from './price-of-year.ts';
import { running } from './running.ts';
import { savings } from './savings.ts';
import { taxes } from './tax.ts';
import { typedSavings } from './typed-saving.ts';
import { workingCapital } from './working-capital.ts';
import { writeOff } from './write-off.ts';

/** Rows of the plan, in the order in which they are shown; each has one quantity a year, `investment.<row>.<year>`, EUR. */
export const planRows = [
  { id: 'capital', label: 'Capital' },
  { id: 'renewal', label: 'Replacement' },
  { id: 'support', label: 'Grants and credits' },
  { id: 'working', label: 'Working capital' },
  { id: 'saving', label: 'Saving' },
  { id: 'further', label: 'Further saving, typed' },
  { id: 'outlets', label: 'Residue outlets' },
  { id: 'tonnes', label: 'Tonnes gained or lost' },
  { id: 'outage', label: 'Outage for the tie-in' },
  { id: 'disposal', label: 'Value at the end' },
  { id: 'tax', label: 'Tax' },
] as const;

export type PlanRow = (typeof planRows)[number]['id'] | 'flow' | 'cumulative' | 'present';

export const planRowId = (row: PlanRow, year: number): string => `investment.${row}.${String(year)}`;

const givenInstead = 'Given for this year in place of what the statements save.';

/** Writes the plan into the graph: every row in every year, and the net present value. Before financing. */
export function writeInvestment(sheet: PlanSheet): void {
  const { plan, years, sheet: model } = sheet;
  const unit = unitOf(sheet);
  const nothing = constant('0', unit);
  const run = running(sheet);
  const capital = capitalOf(sheet);
  const off = writeOff(sheet, capital);
  const prices = pricesOfYears(sheet);
  const allocation = allocationOfYears(sheet);
  const saved = savings(sheet, run, prices, allocation);
  const elsewhere = outlets(sheet, run, prices, allocation);
  const typed = typedSavings(sheet);
  const gained = moreTonnes(sheet, run);
  const tied = workingCapital(sheet, run);
  const rate = planInput(sheet, 'taxRate', 'Tax on profit', '1', { entry: '%', high: '40' });
  const outage = planInput(sheet, 'outage.days', 'Outage for the tie-in, days', '1', {
    high: '20',
    most: '365',
  }).times(planInput(sheet, 'outage.contribution', 'Contribution lost a day', unit));
  const credits = eachYearOnce((year) => {
    const credit = supportOf(sheet, 'credit', year);
    return credit === null ? null : sheet.inMoney(credit, year);
  });
  const named = (row: PlanRow, year: number, quantity: Quantity, note?: string): Quantity =>
    model.define(planRowId(row, year), `${labelOf(row)}, ${String(Number(plan.start) + year)}`, 'EUR', quantity, {
      where: sheet.where,
      ...(note === undefined ? {} : { note }),
    });

  const rows = years.map((year): Readonly<Partial<Record<PlanRow, Quantity>>> => {
    const [spent, replaced] = [capital.spent(year), capital.replaced(year)];
    const support = sumOf([capital.granted(year), credits(year)]);
    const working = tied(year);
    const instead = typed.instead(year);
    const saving = year < plan.operatesFrom ? null : (instead ?? saved(year).times(constant('1', 'a')));
    // What somebody gives in place of the saving holds what residues come to as well.
    const sent = instead === null ? elsewhere(year) : null;
    const [further, tonnes, begun] = [typed.beside(year), gained(year), run.begun(year)];
    return {
      ...(spent === null ? {} : { capital: named('capital', year, nothing.minus(spent)) }),
      ...(replaced === null ? {} : { renewal: named('renewal', year, nothing.minus(replaced)) }),
      ...(support === null ? {} : { support: named('support', year, support) }),
      ...(working === null ? {} : { working: named('working', year, working) }),
      ...(saving === null
        ? {}
        : { saving: named('saving', year, saving, instead === null ? undefined : givenInstead) }),
      ...(further === null ? {} : { further: named('further', year, further) }),
      ...(sent === null ? {} : { outlets: named('outlets', year, sent) }),
      ...(tonnes === null ? {} : { tonnes: named('tonnes', year, tonnes) }),
      ...(begun === null
        ? {}
        : { outage: named('outage', year, nothing.minus(sheet.inMoney(outage.times(begun), year))) }),
      ...(year === plan.years ? { disposal: named('disposal', year, capital.disposal) } : {}),
    };
  });
  // Profit is what the operation brings less what is written off; at the end also what the plant fetches less what is left on the books.
  const profits = rows.map((row, year) => {
    const written = sumOf([off.of(year), year === plan.years ? off.left : null]);
    const { saving, further, outlets: sent, tonnes, outage: stopped, disposal } = row;
    const earned = sumOf([
      ...[saving, further, sent, tonnes, stopped, disposal].map((each) => each ?? null),
      credits(year),
    ]);
    return written === null ? earned : (earned ?? nothing).minus(sheet.fromNominal(written, year));
  });
  const tax = taxes(sheet, profits, rate).map((each, year) =>
    each === null ? null : named('tax', year, nothing.minus(each)),
  );
  let cumulative = nothing;
  const present = rows.map((row, year) => {
    const flow = named('flow', year, sumOf([...Object.values(row), tax[year] ?? null]) ?? nothing);
    cumulative = named('cumulative', year, cumulative.plus(flow));
    return named('present', year, sheet.discounted(flow, year));
  });
  model.define('investment.npv', 'Net present value, before financing', 'EUR', total(present, unit), {
    where: sheet.where,
    note: 'Flows of all years, the first undiscounted; in money of the price year.',
  });
}

function labelOf(row: PlanRow): string {
  if (row === 'flow') return 'Cash flow';
  if (row === 'cumulative') return 'Cash flow so far';
  return row === 'present' ? 'Present value' : (planRows.find(({ id }) => id === row)?.label ?? row);
}
