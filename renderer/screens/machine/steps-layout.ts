import { scaleBand, scaleLinear } from 'd3-scale';
import type { EffectSteps } from '../../../src/index.ts';

/** One bar: a saving of the second route stands above the line, what it costs more below it. */
export interface StepBar {
  readonly key: string;
  readonly label: string;
  /** Plain digits of a saving, in millions a year; steps carry a sign. */
  readonly digits: string;
  readonly isStep: boolean;
  /** Whether the base route pays for it: then the bar is of its paper. */
  readonly baseGives: boolean;
  readonly x: number;
  readonly width: number;
  readonly top: number;
  readonly bottom: number;
  /** Where the running saving stands after this bar, to draw the line to the next. */
  readonly level: number;
}

export interface StepsLayout {
  readonly bars: readonly StepBar[];
  /** Where nothing is saved and nothing lost. */
  readonly ground: number;
}

export interface StepsSize {
  readonly width: number;
  readonly height: number;
  /** Room for the figures above and below the bars. */
  readonly above: number;
  readonly below: number;
}

const shortNames = { slower: 'Speed', breaks: 'Breaks', seconds: 'Second quality', heavier: 'Heavier sheet' } as const;

/** Digits the other way round; nothing has no sign. */
export function turned(digits: string): string {
  if (digits === '' || Number(digits) === 0) return digits.replace('-', '');
  return digits.startsWith('-') ? digits.slice(1) : `-${digits}`;
}

/** The columns that picture and table share, as savings. */
export function stepColumns({ costsAlone, causes, left }: EffectSteps) {
  return [
    { key: 'costsAlone', label: 'Costs alone', step: costsAlone, isStep: false },
    ...causes.map((step) => ({
      key: step.id,
      label: shortNames[step.id as keyof typeof shortNames],
      step,
      isStep: true,
    })),
    { key: 'left', label: 'Left', step: left, isStep: false },
  ].map(({ step, ...column }) => ({ ...column, id: step.quantityId, digits: turned(step.shown) }));
}

/** Lays the steps out, from zero; null while one of them cannot be worked out. */
export function layOutSteps(steps: EffectSteps, size: StepsSize): StepsLayout | null {
  const columns = stepColumns(steps);
  if (columns.some(({ digits }) => digits === '')) return null;
  let level = 0;
  const spans = columns.map((column) => {
    const from = column.isStep ? level : 0;
    level = column.isStep ? level + Number(column.digits) : Number(column.digits);
    return { ...column, from, to: level };
  });
  const levels = [0, ...spans.map(({ to }) => to)];
  const most = Math.max(...levels);
  const least = Math.min(...levels);
  const y = scaleLinear([least, most === least ? least + 1 : most], [size.height - size.below, size.above]);
  const x = scaleBand(
    spans.map(({ key }) => key),
    [0, size.width],
  )
    .paddingInner(0.5)
    .paddingOuter(0.25);
  const bars = spans.map(({ from, to, key, label, digits, isStep }): StepBar => ({
    key,
    label,
    digits,
    isStep,
    baseGives: Number(digits) >= 0,
    x: x(key) ?? 0,
    width: x.bandwidth(),
    top: y(Math.max(from, to)),
    bottom: y(Math.min(from, to)),
    level: y(to),
  }));
  return { bars, ground: y(0) };
}
