import type { StraightLine } from './straight-line.ts';

/** Straight-line code in all its forms, timed as one: the form that is fastest at the task counts. */
export interface Fastest {
  readonly calls: Readonly<Record<string, () => unknown>>;
  time(times: Readonly<Record<string, number>>): number;
}

/** `task` makes what is timed out of a form. */
export function fastest(forms: readonly StraightLine[], task: (run: StraightLine['run']) => () => unknown): Fastest {
  const calls = Object.fromEntries(forms.map(({ form, run }) => [form, task(run)]));
  return { calls, time: (times) => Math.min(...Object.keys(calls).map((form) => times[form] ?? Infinity)) };
}
