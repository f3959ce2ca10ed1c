import { figuresTable } from '../../src/report/text-table.ts';
import type { MachineWords } from './machine-words.ts';
import { type Measured, bars, meets, mostMiB } from './measured.ts';
import type { OwnTime } from './own-times.ts';

export const howToRead = `Ratios say how many times as long something takes as the same model in straight-line JavaScript, which is generated for this run and timed
in turns with it; where a line says "against" something else, they say how many times as fast it is. Speeds are told and never judged by how
this program ends: machines differ.`;

/** What was measured on one case. */
export interface CaseMeasures {
  readonly name: string;
  readonly steps: number;
  readonly inputs: number;
  readonly measures: readonly Measured[];
}

export function printedMachine({ processor, cores, memoryGiB, system, node }: MachineWords): string {
  return `${processor}, ${cores} cores, ${memoryGiB} GiB, ${system}, Node ${node}.`;
}

/** The measures of a case; ratios are to the same model as straight-line JavaScript in the same process, unless a line says otherwise. */
export function printedCase({ name, steps, inputs, measures }: CaseMeasures): string {
  const rows = measures.map(({ key, what, time, against, ratio }) => [
    what,
    written(time),
    written(against),
    number(ratio),
    verdict(key, ratio),
  ]);
  const heads = ['median time of', 'takes', 'against', 'ratio', 'bar'];
  return `On ${name}: ${steps} steps, ${inputs} inputs that reach the result.\n\n${figuresTable(heads, rows)}`;
}

export function printedPeak(peak: number): string {
  const word = peak < mostMiB ? 'under' : 'OVER';
  return `Peak memory of a process that opens the demonstration case and runs the million trials: ${Math.round(peak)} MiB, ${word} the bar of ${mostMiB} MiB.`;
}

export function printedOwnTimes(times: readonly OwnTime[], measures: readonly Measured[]): string {
  const straight = measures.find(({ key }) => key === 'one')?.against ?? NaN;
  const rows = times.map(({ what, time, bar }) => [
    what,
    written(time),
    Math.round(time / straight).toLocaleString('en'),
    bar === undefined ? '' : `${time < bar ? 'under' : 'OVER'} ${written(bar)}`,
  ]);
  return `What the window and the terminal wait for, on the demonstration case:\n\n${figuresTable(
    ['median time of', 'takes', 'times one value', 'bar'],
    rows,
  )}`;
}

function verdict(key: string, ratio: number): string {
  const bar = bars[key];
  if (bar === undefined) return '';
  return meets(bar, ratio) ? `meets ${bar.sense} ${bar.value}` : `MISSES ${bar.sense} ${bar.value}`;
}

function number(ratio: number): string {
  return ratio >= 100 ? Math.round(ratio).toLocaleString('en') : ratio.toPrecision(3);
}

function written(milliseconds: number): string {
  if (milliseconds < 0.1) return `${(milliseconds * 1000).toPrecision(3)} us`;
  return milliseconds < 1000 ? `${milliseconds.toPrecision(3)} ms` : `${(milliseconds / 1000).toPrecision(3)} s`;
}
