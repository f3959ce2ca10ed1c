import type { Explanation, Ingredient } from '../../../src/index.ts';
import { whereFrom } from '../../fields/describe-input.ts';
import type { NumberStyle } from '../../numbers/number-style.ts';
import type { Working } from '../../session/working.svelte.ts';
import { unfoldedSteps } from './unfolded-steps.ts';

/** The working as plain text, as far as it is unfolded on the slip. */
export function workingText(
  explanation: Explanation,
  working: Pick<Working, 'of' | 'isUnfolded'>,
  numbers: NumberStyle,
): string {
  const lines = [named(explanation, numbers), ...equation(explanation, numbers)];
  for (const { ingredient, depth } of unfoldedSteps(explanation, working)) {
    const indent = '  '.repeat(depth + 1);
    lines.push(`${indent}${named(ingredient, numbers)}`);
    for (const line of equation(ingredient, numbers)) lines.push(`${indent}  ${line}`);
    if (ingredient.input !== null) lines.push(`${indent}  ${whereFrom(ingredient.input)}`);
  }
  if (explanation.exact !== '') lines.push(`Full value ${numbers.digits(explanation.exact)}`);
  return lines.join('\n');
}

function named({ label, where, value, unit }: Explanation | Ingredient, numbers: NumberStyle): string {
  const name = where === '' ? label : `${label}, ${where}`;
  return `${name}: ${Number.isNaN(value) ? 'not yet' : `${numbers.result(value, unit)} ${numbers.unit(unit)}`}`;
}

function equation({ words, numbers: inNumbers }: Explanation | Ingredient, numbers: NumberStyle): string[] {
  if (words === '') return [];
  return [inNumbers === '' ? `= ${words}` : `= ${words}: ${numbers.equation(inNumbers)}`];
}
