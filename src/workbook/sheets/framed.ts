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
  const isOfNumbers = (column: number): boolean => {
    const filled = rows.map((row) => row[column]).filter((cell) => cell !== undefined && cell.kind !== 'empty');
    return filled.filter(isNumber).length * 2 > filled.length;
  };
  const top: readonly (readonly Cell[])[] = [
    [title(words.title)],
    [note(words.says)],
    [formula(verdict.wordsName, verdict.words, 'as typed', 'verdict')],
    heads.length === 0 ? [empty] : heads.map((head, column) => (isOfNumbers(column) ? toTheRight(head) : head)),
  ];
  return {
    name,
    columns: widths.map((width) => ({ width })),
    rows: [...top, ...rows],
    frozenRows: top.length,
    ...(frozenColumns === undefined ? {} : { frozenColumns }),
  };
}

function isNumber(cell: Cell | undefined): boolean {
  if (cell?.kind === 'formula') return typeof cell.result === 'number';
  return cell?.kind === 'number' || (cell?.kind === 'entry' && typeof cell.value === 'number');
}

function toTheRight(head: Cell): Cell {
  return head.kind === 'text' && head.look === 'head' ? { ...head, look: 'number head' } : head;
}
