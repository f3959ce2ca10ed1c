import type { Cell, Look, NumberForm } from './plan.ts';

const formats: Readonly<Record<NumberForm, string>> = {
  money: '#,##0.00',
  'whole money': '#,##0',
  quantity: '#,##0.0000',
  share: '0.00%',
  whole: '0',
  'as typed': 'General',
};

const ink = { argb: 'FF1F2A30' };
const pale = { argb: 'FF6B7880' };
const solid = (argb: string) => ({ type: 'pattern', pattern: 'solid', fgColor: { argb } }) as const;
const edge = { style: 'thin', color: { argb: 'FFC9A227' } } as const;

const head = {
  font: { bold: true, color: ink },
  fill: solid('FFE7EBE4'),
  border: { bottom: { style: 'medium', color: ink } },
} as const;

/** How each look is drawn: told apart by weight and by what is around it, and not by colour alone. */
const looks = {
  plain: { font: { color: ink } },
  title: { font: { bold: true, size: 16, color: ink } },
  head: { ...head, alignment: { wrapText: true, vertical: 'bottom' } },
  'number head': { ...head, alignment: { wrapText: true, vertical: 'bottom', horizontal: 'right' } },
  strong: { font: { bold: true, color: ink } },
  note: { font: { italic: true, color: pale } },
  program: { font: { italic: true, color: { argb: 'FF5B3B8C' } }, fill: solid('FFF3EFF8') },
  verdict: { font: { bold: true, color: { argb: 'FF1B6B3A' } } },
  bar: { font: { color: { argb: 'FF4C6A78' }, size: 8 } },
  entry: {
    font: { color: { argb: 'FF0B3D91' } },
    fill: solid('FFFFF6D6'),
    border: { top: edge, left: edge, bottom: edge, right: edge },
  },
} as const satisfies Readonly<Record<Look | 'plain', object>>;

/** Drawn over a verdict that holds the word "broken", or that cannot be worked out. */
export const brokenStyle = {
  font: { bold: true, color: { argb: 'FFFFFFFF' } },
  fill: { type: 'pattern', pattern: 'solid', bgColor: { argb: 'FFB3261E' } },
} as const;

const made = new Map<string, object>();

/**
 * The style of a cell, one object for all cells that look alike. Only what is there to be typed over is not locked. Words beside a number
 * keep a little away from it, which the first column has no need of.
 */
export function cellStyle(cell: Cell, column: number): object {
  const look = cell.kind === 'entry' ? 'entry' : cell.kind === 'empty' ? 'plain' : (cell.look ?? 'plain');
  const form = cell.kind === 'text' || cell.kind === 'empty' ? 'as typed' : cell.form;
  const isBeside = cell.kind === 'text' && column > 1 && !('alignment' in looks[look]);
  const key = `${look} ${form} ${String(isBeside)}`;
  const known = made.get(key) ?? {
    ...looks[look],
    ...(isBeside ? { alignment: { horizontal: 'left', indent: 1 } } : {}),
    numFmt: formats[form],
    protection: { locked: look !== 'entry' },
  };
  made.set(key, known);
  return known;
}
