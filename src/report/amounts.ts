import type { OpenCase } from '../study/open-case.ts';
import { areAlike, rounded, roundedParts, shifted, shownDifference } from '../study/rounding.ts';
import type { Amount } from './spread.ts';

/** The two ids under which the same money stands in the graph. */
export interface AmountIds {
  readonly perTonneId: string;
  readonly perYearId: string;
}

const decimals = 2;

/**
 * Amounts of several parts, rounded so that they add up to the whole as it is shown. `facing` holds, part for part, the amounts of the
 * other page that they face: where both are equal, both are shown alike.
 */
export function amountsOf(
  open: OpenCase,
  parts: readonly AmountIds[],
  whole: Amount,
  facing: readonly (Amount | null)[] = [],
): readonly Amount[] {
  const { values } = open;
  const perTonne = shownParts(open, parts, facing, perTonneView, whole);
  const perYear = shownParts(open, parts, facing, perYearView, whole);
  return parts.map(({ perTonneId, perYearId }, place) => ({
    perTonneId,
    perYearId,
    perTonne: values.number(perTonneId),
    perYear: values.number(perYearId),
    shownPerTonne: perTonne[place] ?? '',
    shownPerYear: perYear[place] ?? '',
  }));
}

/** One of the two ways in which money is shown: where its digits stand, and in which power of ten. */
interface View {
  readonly id: (ids: AmountIds) => string;
  readonly shown: (amount: Amount) => string;
  readonly power: number;
}

const perTonneView: View = { id: (ids) => ids.perTonneId, shown: (amount) => amount.shownPerTonne, power: 0 };
const perYearView: View = { id: (ids) => ids.perYearId, shown: (amount) => amount.shownPerYear, power: -6 };

function shownParts(
  { values }: OpenCase,
  parts: readonly AmountIds[],
  facing: readonly (Amount | null)[],
  view: View,
  whole: Amount,
): readonly string[] {
  const exact = parts.map((part) => values.exact(view.id(part)));
  const total = view.shown(whole);
  if (total === '' || exact.includes('')) {
    return exact.map((digits) => (digits === '' ? '' : rounded(shifted(digits, view.power), decimals)));
  }
  const kept = exact.map((digits, place) => {
    const other = facing[place] ?? null;
    return other !== null && areAlike(values.exact(view.id(other)), digits) ? view.shown(other) || null : null;
  });
  return roundedParts(
    exact.map((digits) => shifted(digits, view.power)),
    decimals,
    total,
    kept,
  );
}

export function wholeAmount({ values }: OpenCase, ids: AmountIds): Amount {
  const show = (digits: string, scale: number): string =>
    digits === '' ? '' : rounded(shifted(digits, scale), decimals);
  return {
    ...ids,
    perTonne: values.number(ids.perTonneId),
    perYear: values.number(ids.perYearId),
    shownPerTonne: show(values.exact(ids.perTonneId), 0),
    shownPerYear: show(values.exact(ids.perYearId), -6),
  };
}

/** A difference is shown as what a reader gets who takes one shown figure from the other; a side that is not there is nothing. */
export function differenceAmount(
  { values }: OpenCase,
  ids: AmountIds,
  withAmount: Amount | null,
  base: Amount | null,
): Amount {
  const show = (pick: (amount: Amount) => string): string => {
    const [minuend, subtrahend] = [withAmount === null ? '0' : pick(withAmount), base === null ? '0' : pick(base)];
    return minuend === '' || subtrahend === '' ? '' : shownDifference(minuend, subtrahend, decimals);
  };
  return {
    ...ids,
    perTonne: values.number(ids.perTonneId),
    perYear: values.number(ids.perYearId),
    shownPerTonne: show((amount) => amount.shownPerTonne),
    shownPerYear: show((amount) => amount.shownPerYear),
  };
}
