import { empty, formula, note, title } from '../cells.ts';
import type { Cell, SheetPlan } from '../plan.ts';
import type { Verdict } from '../checks/verdict.ts';

interface Frame {
  readonly name: string;
  readonly title: string;
  readonly says: string;
  readonly verdict: Verdict;
  readonly heads: readonly Cell[];
  readonly widths: readonly number[];
  readonly rows: readonly (readonly Cell[])[];
  readonly frozenColumns?: number;
}

/** A sheet under its title, a line on what it is, and the verdict of all checks; these and the heads stay in view. */
export function framed({ name, verdict, heads, widths, rows, frozenColumns, ...words }: Frame): SheetPlan {
  const top: readonly (readonly Cell[])[] = [
    [title(words.title)],
    [note(words.says)],
    [formula(verdict.wordsName, verdict.words, 'as typed', 'verdict')],
    heads.length === 0 ? [empty] : heads,
  ];
  return {
    name,
    columns: widths.map((width) => ({ width })),
    rows: [...top, ...rows],
    frozenRows: top.length,
    ...(frozenColumns === undefined ? {} : { frozenColumns }),
  };
}
