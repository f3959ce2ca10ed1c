import type { Outcome } from '../../case/problem.ts';
import { type OpenCase, workOut } from '../open-case.ts';

const usualYears = 15;

/**
 * Begins a plan to change from the base route to the other: the capital of that route as one item in year 0, running from year 1, in real
 * terms, from the year after the price year. All of it can be changed afterwards.
 */
export function startPlan({ content, values }: OpenCase): Outcome<OpenCase> {
  const capital = `${content.compare.with}.capital`;
  const outlay = values.has(capital) ? values.exact(capital) : '0';
  return workOut({
    ...content,
    investment: {
      from: content.compare.base,
      to: content.compare.with,
      start: String(Number(content.priceYear) + 1),
      years: usualYears,
      operatesFrom: 1,
      money: 'real',
      items: [{ id: 'line', label: 'New line, complete' }],
      depreciation: 'straight line',
      losses: 'carried forward',
    },
    inputs: {
      ...content.inputs,
      'investment.item.line.0': {
        value: outlay === '' ? '0' : outlay,
        unit: content.currency,
        source: 'Capital of the line, as it stood in the statement',
      },
    },
  });
}
