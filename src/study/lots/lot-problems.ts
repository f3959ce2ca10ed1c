import type { Case } from '../../case/case.ts';
import { type Lot, lotFigures } from '../../case/lots.ts';
import type { Problem } from '../../case/problem.ts';
import { type Entry, givenFigure } from '../../paper/entry.ts';
import { paperGrades } from '../../paper/materials/en-643.ts';
import { fraction, notNegative, positive } from '../../paper/sheet.ts';
import { lotEntry, readingEntry } from './lot-entries.ts';

/** What cannot be true of the lots of a case: figures outside what is possible, and grades that the program's list does not hold. */
export function lotProblems({ lots, currency }: Case): readonly Problem[] {
  if (lots === undefined) return [];
  const money = (id: string, label: string): Entry => ({ id: `lots.${id}`, label, unit: `${currency}/t`, allowed: {} });
  const share = (id: string, label: string): Entry => ({ id: `lots.${id}`, label, unit: '%', allowed: fraction });
  const { blend } = lots;
  return [
    ...lots.offers.flatMap((lot) => offerProblems(currency, lot)),
    ...checked(money('target', 'Target cost'), lots.target),
    ...checked({ ...share('creditRate', 'Yearly rate of credit'), allowed: notNegative }, lots.creditRate),
    ...checked({ id: 'lots.blend.product', label: 'Product wanted', unit: 't', allowed: positive }, blend?.product),
    ...checked(share('blend.ash', 'Ash, at most'), blend?.ash),
    ...checked(share('blend.moisture', 'Moisture, at most'), blend?.moisture),
    ...checked(
      { id: 'lots.blend.macroStickies', label: 'Macro-stickies, at most', unit: 'kg/t', allowed: notNegative },
      blend?.macroStickies,
    ),
    ...Object.entries(blend?.shares ?? {}).flatMap(([id, value]) => [
      ...checked(share(`blend.shares.${id}`, 'Share of the dry feed'), value),
      ...(lots.offers.some((lot) => lot.id === id) ? [] : [unknown('lots.blend.shares', id, 'lot', lots.offers)]),
    ]),
    ...Object.entries(blend?.grades ?? {}).flatMap(([code, { least, most }]) => [
      ...gradeProblem('lots.blend.grades', code),
      ...checked(share(`blend.grades.${code}.least`, 'Share of the grade, at least'), least),
      ...checked(share(`blend.grades.${code}.most`, 'Share of the grade, at most'), most),
    ]),
  ];
}

function offerProblems(currency: string, lot: Lot): readonly Problem[] {
  return [
    ...gradeProblem(`lots.${lot.id}.grade`, lot.grade),
    ...gradeProblem(`lots.${lot.id}.downgradeTo`, lot.downgradeTo),
    ...(['moisture', 'unusable'] as const).flatMap((what) =>
      (lot[what] ?? []).flatMap((value) => checked(readingEntry(lot.id, what), value)),
    ),
    ...lotFigures.flatMap((figure) => checked(lotEntry(currency, lot.id, lot.basis, figure), lot.figures[figure])),
  ];
}

function checked(entry: Entry, value: string | undefined): readonly Problem[] {
  if (value === undefined) return [];
  const found = givenFigure(entry, { value, unit: '' });
  return found.ok ? [] : found.problems;
}

function gradeProblem(path: string, code: string | undefined): readonly Problem[] {
  if (code === undefined || paperGrades.has(code)) return [];
  return [{ kind: 'unknown reference', path, given: code, what: 'grade', known: [...paperGrades.keys()] }];
}

function unknown(path: string, given: string, what: string, known: readonly { readonly id: string }[]): Problem {
  return { kind: 'unknown reference', path, given, what, known: known.map(({ id }) => id) };
}
