import type { PlanResults } from '../../../src/index.ts';

/** In what money of a plan is shown: a word and what one of it is worth. */
export interface PlanScale {
  readonly factor: number;
  readonly word: 'thousand' | 'million' | 'billion';
  readonly letter: 'k' | 'm' | 'bn';
  readonly decimals: 1;
}

const thousand: PlanScale = { factor: 1e3, word: 'thousand', letter: 'k', decimals: 1 };
const million: PlanScale = { factor: 1e6, word: 'million', letter: 'm', decimals: 1 };
const billion: PlanScale = { factor: 1e9, word: 'billion', letter: 'bn', decimals: 1 };

/** With one decimal, millions tell a plan of two million and more; smaller ones are told in thousands, and those above ten thousand million in billions. */
export function planScale({ flows, cumulative }: Pick<PlanResults, 'flows' | 'cumulative'>): PlanScale {
  const largest = Math.max(0, ...[...flows, ...cumulative].filter(Number.isFinite).map(Math.abs));
  if (largest === 0 || (largest >= 2e6 && largest < 1e10)) return million;
  return largest < 2e6 ? thousand : billion;
}
