import {
  accountIdOf,
  accountPerYearIdOf,
  accounts,
  groupIdOf,
  groupPerYearIdOf,
  groups,
} from '../../paper/accounts.ts';
import { empty, heads, strong, text } from '../cells.ts';
import type { Verdict } from '../checks/verdict.ts';
import type { ModelCells } from '../model/model-cells.ts';
import type { Cell, Look, SheetPlan } from '../plan.ts';
import { framed } from './framed.ts';
import { linkCell } from './link-cell.ts';

/** What a tonne costs by each route, by account and by group, per tonne and per year, and what separates the two that are compared. */
export function statementSheet(cells: ModelCells, name: string, verdict: Verdict): SheetPlan {
  const { content, model } = cells.open;
  const { currency, routes } = content;
  const pair = (ids: readonly [string, string], look?: Look): readonly Cell[] =>
    ids.map((id) => linkCell(cells, id, name, look));
  const owners = [...routes.map(({ id }) => id), 'difference'];
  const line = (label: string, idsOf: (owner: string) => readonly [string, string], look?: Look): readonly Cell[] => [
    look === undefined ? text(`   ${label}`) : strong(label),
    ...owners.flatMap((owner) => pair(idsOf(owner), look)),
  ];
  const rows = groups.flatMap((group) => [
    line(group.label, (owner) => [groupIdOf(owner, group.id), groupPerYearIdOf(owner, group.id)], 'strong'),
    ...accounts
      .filter((account) => account.group === group.id)
      .map((account) =>
        line(account.label, (owner) => [accountIdOf(owner, account.id), accountPerYearIdOf(owner, account.id)]),
      ),
  ]);
  const { totalId, totalPerYearId } = model.difference;
  const isDifference = (owner: string): boolean => owner === 'difference';
  const whole = line(
    'Whole cost',
    (owner) =>
      isDifference(owner) ? [totalId, totalPerYearId] : [`${owner}.cost.total`, `${owner}.costPerYear.total`],
    'strong',
  );
  const withoutPolicy = [
    text('Whole cost without taxes, levies and carbon'),
    ...owners.flatMap((owner) => [
      linkCell(cells, isDifference(owner) ? 'difference.withoutPolicy' : `${owner}.cost.withoutPolicy`, name),
      empty,
    ]),
  ];
  const labels = [...routes.map(({ label }) => label), 'Difference'];
  return framed({
    name,
    title: `Statement: ${content.title}`,
    says: `Costs are positive, credits negative. The difference is ${labelOf(cells, model.difference.withId)} less ${labelOf(cells, model.difference.baseId)}. Money of ${content.priceYear}.`,
    verdict,
    heads: heads('Account', ...labels.flatMap((label) => [`${label}, ${currency}/t`, `${label}, ${currency}/year`])),
    widths: [46, ...owners.flatMap(() => [18, 20])],
    rows: [...rows, whole, [], withoutPolicy],
    frozenColumns: 1,
  });
}

function labelOf({ open }: ModelCells, id: string): string {
  return open.content.routes.find((route) => route.id === id)?.label ?? id;
}
