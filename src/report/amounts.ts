import type { OpenCase } from '../study/open-case.ts';
import { rounded, roundedParts, shifted, shownDifference } from '../study/rounding.ts';
import type { Amount } from './spread.ts';

/** The two ids under which the same money stands in the graph. */
export interface AmountIds {
  readonly perTonneId: string;
  readonly perYearId: string;
}

const decimals = 2;

/** Amounts of several parts, rounded so that they add up to the whole as it is shown. */
export function amountsOf({ values }: OpenCase, parts: readonly AmountIds[], whole: Amount): readonly Amount[] {
  const shown = (ids: readonly string[], scale: number, total: string): readonly string[] => {
    const exact = ids.map((id) => values.exact(id));
    if (total === '' || exact.includes(''))
      return exact.map((digits) => (digits === '' ? '' : rounded(shifted(digits, scale), decimals)));
    return roundedParts(
      exact.map((digits) => shifted(digits, scale)),
      decimals,
      total,
    );
  };
  const perTonne = shown(
    parts.map((part) => part.perTonneId),
    0,
    whole.shownPerTonne,
  );
  const perYear = shown(
    parts.map((part) => part.perYearId),
    -6,
    whole.shownPerYear,
  );
  return parts.map((part, place) => ({
    ...part,
    perTonne: values.number(part.perTonneId),
    perYear: values.number(part.perYearId),
    shownPerTonne: perTonne[place] ?? '',
    shownPerYear: perYear[place] ?? '',
  }));
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
