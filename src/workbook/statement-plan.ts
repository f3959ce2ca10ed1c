import type { Comparison } from '../study/comparison.ts';
import { wasteCodeCaution } from '../wording/waste-code-phrase.ts';
import type { ReconciledGroup } from '../study/trust/reconcile.ts';
import { type Conditional, conditionPhrase } from '../wording/condition-phrase.ts';
import { measuredSheet } from './measured-sheet.ts';
import type { Cell, SheetPlan, WorkbookPlan } from './plan.ts';

/** What a plan needs of the spread: on what condition it holds, and what to look at. */
interface Cautions extends Conditional {
  readonly title: string;
  readonly warnings: readonly { readonly sentence: string }[];
}

const text = (value: string, strong = false): Cell => ({ kind: 'text', text: value, strong });
const money = (value: number, strong = false): Cell =>
  Number.isFinite(value) ? { kind: 'number', value, form: 'money', strong } : { kind: 'empty' };
const yearly = (value: number, strong = false): Cell =>
  Number.isFinite(value) ? { kind: 'number', value, form: 'whole money', strong } : { kind: 'empty' };
const quantity = (value: number): Cell =>
  Number.isFinite(value) ? { kind: 'number', value, form: 'quantity' } : { kind: 'empty' };

/** The statement and what is behind it, as values: two sheets and a cover. */
export function statementPlan(
  comparison: Comparison,
  cautions: Cautions,
  reconciled: readonly ReconciledGroup[] = [],
): WorkbookPlan {
  const measured = reconciled.some(({ rows }) => rows.some(({ actual }) => actual !== null));
  return {
    sheets: [
      about(comparison, cautions),
      statement(comparison),
      quantities(comparison),
      ...(measured ? [measuredSheet(reconciled)] : []),
    ],
  };
}

function about({ product, currency, priceYear }: Comparison, cautions: Cautions): SheetPlan {
  const { title, warnings } = cautions;
  const phrase = conditionPhrase(cautions);
  const facts: readonly (readonly Cell[])[] = [
    [text(title, true)],
    ...(phrase === '' ? [] : [[text('Holds'), text(`${phrase}.`)]]),
    [text('Product'), text(product.name)],
    [text('Tonnes a year'), { kind: 'number', value: product.tonnesPerYear, form: 'whole money' }],
    [text('Currency'), text(currency)],
    [text('Prices of'), text(priceYear)],
    [
      text('Contents'),
      text(
        'Values of one comparison; cost is positive, credits are negative, differences are the second route less the first.',
      ),
    ],
    [],
    [text('To look at', true)],
    ...warnings.map((warning) => [text(warning.sentence)]),
  ];
  return { name: 'About', columns: [{ width: 24 }, { width: 90 }], rows: facts, frozenRows: 0 };
}

function statement({ routes, difference, currency }: Comparison): SheetPlan {
  const heads = [
    text('Account', true),
    ...routes.flatMap((route) => [
      text(`${route.label}, ${currency}/t`, true),
      text(`${route.label}, ${currency}/year`, true),
    ]),
    text(`Difference, ${currency}/t`, true),
    text(`Difference, ${currency}/year`, true),
  ];
  const rows = difference.accounts.map((account, place) => [
    text(account.label),
    ...routes.flatMap((route) => [
      money(route.accounts[place]?.perTonne ?? NaN),
      yearly(route.accounts[place]?.perYear ?? NaN),
    ]),
    money(account.perTonne),
    yearly(account.perYear),
  ]);
  const total = [
    text('Whole cost', true),
    ...routes.flatMap((route) => [money(route.totals.costPerTonne, true), yearly(route.totals.costPerYear, true)]),
    money(difference.perTonne, true),
    yearly(difference.perYear, true),
  ];
  return {
    name: 'Statement',
    columns: [{ width: 34 }, ...heads.slice(1).map(() => ({ width: 24 }))],
    rows: [heads, ...rows, total],
    frozenRows: 1,
  };
}

function quantities({ routes }: Comparison): SheetPlan {
  const rows = routes.flatMap((route): (readonly Cell[])[] => [
    [text(route.label, true)],
    [text('Electricity'), quantity(route.energy.electricity), text('kWh/t')],
    [text('Heat'), quantity(route.energy.heat), text('GJ/t')],
    [text('Fresh water'), quantity(route.water.fresh), text('m³/t')],
    [text('Effluent'), quantity(route.water.effluent), text('m³/t')],
    ...route.purchased.map((each) => [
      text(`${each.label}, as received`),
      quantity(each.asReceived),
      text('t as received/t'),
    ]),
    ...route.lines.map((line) => [text(`${line.label}, line yield`), quantity(line.yield), text('share')]),
    ...route.residues.map((each) => [
      text(`${each.label}, as hauled`),
      quantity(each.wet),
      text('wet t/t'),
      text(each.wasteCode === '' ? 'Waste code: to be classified' : `Waste code ${each.wasteCode}`),
    ]),
    [],
  ]);
  const columns = [{ width: 44 }, { width: 18 }, { width: 18 }, { width: 28 }];
  return { name: 'Quantities', columns, rows: [...rows, [text(wasteCodeCaution)]], frozenRows: 0 };
}
