import type { Explanation, Ingredient } from '../../../src/index.ts';
import { whereFrom } from '../../fields/describe-input.ts';
import type { NumberStyle } from '../../numbers/number-style.ts';
import { pathUnder, type Working } from '../../session/working.svelte.ts';

/** The working as plain text, as far as it is unfolded on the slip. */
export function workingText(
  explanation: Explanation,
  working: Pick<Working, 'of' | 'isUnfolded'>,
  numbers: NumberStyle,
): string {
  const lines = [named(explanation, numbers), ...equation(explanation, numbers)];
  const visit = (ingredients: readonly Ingredient[], parentPath: string, indent: string): void => {
    for (const ingredient of ingredients) {
      const path = pathUnder(parentPath, ingredient.id);
      lines.push(`${indent}${named(ingredient, numbers)}`);
      for (const line of equation(ingredient, numbers)) lines.push(`${indent}  ${line}`);
      if (ingredient.input !== null) lines.push(`${indent}  ${whereFrom(ingredient.input)}`);
      const made = working.isUnfolded(path) ? working.of(ingredient.id) : null;
      if (made !== null) visit(made.ingredients, path, `${indent}  `);
    }
  };
  visit(explanation.ingredients, explanation.id, '  ');
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
