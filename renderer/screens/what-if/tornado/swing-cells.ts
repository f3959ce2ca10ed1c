import type { Sensitivity, Swing } from '../../../../src/index.ts';
import type { Cells } from '../../waste/cells.ts';
import { swingNote } from './swing-note.ts';

export const swingHeads = [
  'input',
  'unit',
  'today',
  'low',
  'high',
  'result at low',
  'result at high',
  'swing',
  'slope',
  'elasticity',
  'note',
] as const;

/** The table behind the picture: figures as numbers, results in `unit`. Slopes are per unit of the input, elasticities per cent per per cent. */
export function swingCells(
  sensitivity: Sensitivity,
  unit: string,
  decimals: number,
  readable: (unit: string) => string,
): Cells {
  const isUsual = sensitivity.method === 'usual range';
  const row = (swing: Swing): Cells[number] => [
    swing.where === '' ? swing.label : `${swing.label}, ${swing.where}`,
    readable(swing.unit),
    plain(swing.figure),
    plain(swing.low),
    plain(swing.high),
    Number(swing.atLow.toFixed(decimals)),
    Number(swing.atHigh.toFixed(decimals)),
    Number(swing.swing.toFixed(decimals)),
    Number(swing.slope.toPrecision(4)),
    swing.elasticity === null ? '' : Number(swing.elasticity.toPrecision(4)),
    swingNote(swing, isUsual),
  ];
  return [
    swingHeads.map((head) => (head.startsWith('result') || head === 'swing' ? `${head}, ${unit}` : head)),
    ...sensitivity.judged.map(row),
    ...sensitivity.conventional.map(row),
  ];
}

/** Takes away what binary fractions add. */
function plain(value: number): number {
  return Number(value.toPrecision(12));
}
