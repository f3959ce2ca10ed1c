import { kindOfLines } from '../case/route-kind.ts';
import { type CostLine, accounts, groupIdOf, groupPerYearIdOf, groups } from '../paper/accounts.ts';
import type { FacingLines } from '../paper/difference.ts';
import { Failure } from '../kernel/evaluate/failure.ts';
import { nodeNamed } from '../kernel/graph/graph.ts';
import { capitalStand } from '../study/before-new-plant.ts';
import { checksOf } from '../study/checks.ts';
import { marginalPower } from '../study/marginal-power.ts';
import type { OpenCase } from '../study/open-case.ts';
import { sameProduct } from '../study/trust/same-product.ts';
import { cautionsOf } from '../study/warnings.ts';
import { cautionSentence } from '../wording/caution-sentence.ts';
import { amountsOf, differenceAmount, wholeAmount } from './amounts.ts';
import { inputView } from './input-view.ts';
import type { Amount, Driver, RouteHead, Spread, SpreadGroup, SpreadRow, SpreadSide } from './spread.ts';
import { sideBySide } from './side-by-side.ts';
import { stepsPhrase } from './steps-phrase.ts';

const checkLabels = {
  mass: 'Mass closes',
  machine: 'Machine balance closes',
  water: 'Water closes',
  costs: 'Costs add up',
  difference: 'Difference adds up',
  carbon: 'Carbon adds up',
} as const;

/** The home page of an open case: two routes face to face, and what separates them. `today` ("2026-11-25") is what ages are told by. */
export function spreadOf(open: OpenCase, today: string | null = null): Spread {
  const { content, model } = open;
  const { baseId, withId, totalId, totalPerYearId } = model.difference;
  const base = routeHead(open, baseId);
  const head = routeHead(open, withId);
  const atMargin = marginalPower(open);
  return {
    title: content.title,
    currency: content.currency,
    priceYear: content.priceYear,
    product: { name: content.product.name, moistureInput: 'product.moisture', tonnesInput: 'product.tonnes' },
    base,
    with: head,
    difference: differenceAmount(open, { perTonneId: totalId, perYearId: totalPerYearId }, head.total, base.total),
    atMarginalPower: atMargin === null ? null : wholeAmount(open, atMargin),
    capital: capitalStand(open),
    sameProduct: sameProduct(open),
    sideBySide: sideBySide(open),
    fibrePrices: Object.fromEntries(
      content.materials.map(({ id, price }) => [`material.${id}.price`, { material: id, terms: price }]),
    ),
    groups: ledger(open, base.total, head.total),
    // What cannot be worked out yet breaks no law: the gaps are told as warnings.
    checks: (open.gaps.length > 0 ? [] : checksOf(open)).map(({ id, kept }) => ({ id, kept, label: checkLabels[id] })),
    warnings: cautionsOf(open, today).map((caution, place) => ({
      id: `${caution.kind} ${String(place)}`,
      sentence: cautionSentence(caution),
      about: caution.about === '' ? null : caution.about,
    })),
    inputs: Object.fromEntries(model.graph.inputs.map((input) => [input.id, inputView(input)])),
  };
}

function routeHead(open: OpenCase, id: string): RouteHead {
  const route = open.model.routes.find((each) => each.plant.route.id === id);
  if (route === undefined) throw new Error(`No route "${id}"`);
  const { materials } = open.content;
  const { totalId, totalPerYearId } = route.statement;
  return {
    id,
    label: route.plant.route.label,
    kind: kindOfLines(route.plant.route.lines, materials),
    steps: stepsPhrase(route.plant, materials),
    total: wholeAmount(open, { perTonneId: totalId, perYearId: totalPerYearId }),
  };
}

function ledger(open: OpenCase, baseTotal: Amount, withTotal: Amount): readonly SpreadGroup[] {
  const { baseId, withId, rows } = open.model.difference;
  const idsOf = (routeId: string) =>
    groups.map(({ id }) => ({ perTonneId: groupIdOf(routeId, id), perYearId: groupPerYearIdOf(routeId, id) }));
  const baseAmounts = amountsOf(open, idsOf(baseId), baseTotal);
  const withAmounts = amountsOf(open, idsOf(withId), withTotal, baseAmounts);
  return groups.flatMap(({ id, label }, place): SpreadGroup[] => {
    const base = baseAmounts[place];
    const other = withAmounts[place];
    if (base === undefined || other === undefined) return [];
    const own = rows.filter((row) => accounts.find((account) => account.id === row.account)?.group === id);
    const lines = spreadRows(open, own, base, other);
    // A machine that runs alike on both furnishes takes no room in the ledger.
    if (id === 'machine effect' && lines.length === 0 && base.perTonne === 0 && other.perTonne === 0) return [];
    const ids = { perTonneId: groupIdOf('difference', id), perYearId: groupPerYearIdOf('difference', id) };
    return [
      {
        id,
        label,
        base,
        with: other,
        difference: differenceAmount(open, ids, other, base),
        rows: lines,
      },
    ];
  });
}

function spreadRows(open: OpenCase, rows: readonly FacingLines[], base: Amount, other: Amount): readonly SpreadRow[] {
  const left = sidesOf(
    open,
    rows,
    (row) => row.base,
    base,
    () => null,
  );
  const right = sidesOf(
    open,
    rows,
    (row) => row.with,
    other,
    (row) => left.get(row)?.amount ?? null,
  );
  return rows
    .map((row): SpreadRow => {
      const [baseSide, withSide] = [left.get(row) ?? null, right.get(row) ?? null];
      const difference = differenceAmount(open, row, withSide?.amount ?? null, baseSide?.amount ?? null);
      return {
        key: `${row.account}.${row.with?.key ?? row.base?.key ?? ''}`,
        base: baseSide,
        with: withSide,
        difference,
      };
    })
    .filter((row) => !isEmpty(row));
}

/** One page of some rows: each line with its amount and what sets it. */
function sidesOf(
  open: OpenCase,
  rows: readonly FacingLines[],
  pick: (row: FacingLines) => CostLine | null,
  whole: Amount,
  facing: (row: FacingLines) => Amount | null,
): ReadonlyMap<FacingLines, SpreadSide> {
  const present = rows.flatMap((row) => {
    const line = pick(row);
    return line === null ? [] : [{ row, line }];
  });
  const amounts = amountsOf(
    open,
    present.map(({ line }) => line),
    whole,
    present.map(({ row }) => facing(row)),
  );
  const sides = present.flatMap(({ row, line }, place) => {
    const amount = amounts[place];
    return amount === undefined
      ? []
      : [[row, { label: line.label, amount, driver: driverOf(open, line.driverId) }] as const];
  });
  return new Map(sides);
}

/** A line that is nothing on both pages and that no input sets would only take room. */
function isEmpty({ base, with: other }: SpreadRow): boolean {
  const isNothing = (side: SpreadSide | null): boolean =>
    side === null || (side.amount.perTonne === 0 && side.driver?.kind !== 'input');
  return isNothing(base) && isNothing(other);
}

function driverOf({ model, values }: OpenCase, id: string | null): Driver | null {
  if (id === null) return null;
  if (model.graph.inputs.some((input) => input.id === id)) return { kind: 'input', id };
  if (!values.has(id)) return null;
  const value = values.of(id);
  return {
    kind: 'result',
    id,
    value: value instanceof Failure ? NaN : value.toNumber(),
    unit: nodeNamed(model.graph, id).unit.text,
  };
}
