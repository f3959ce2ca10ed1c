import type { Explanation, Ingredient } from '../../../src/index.ts';
import { pathUnder, type Working } from '../../session/working.svelte.ts';

/** One line of the working: an ingredient, and how deep under the explained figure it stands. */
export interface WorkingStep {
  readonly ingredient: Ingredient;
  readonly path: string;
  readonly depth: number;
  /** Where it belongs, said only where that is elsewhere than the figure above it. */
  readonly where: string;
}

/** The ingredients of a figure, and under each that is unfolded its own, in reading order. */
export function unfoldedSteps(
  explanation: Explanation,
  working: Pick<Working, 'of' | 'isUnfolded'>,
  parentPath = explanation.id,
  depth = 0,
): readonly WorkingStep[] {
  return explanation.ingredients.flatMap((ingredient) => {
    const path = pathUnder(parentPath, ingredient.id);
    const where = ingredient.where === explanation.where ? '' : ingredient.where;
    const made = working.isUnfolded(path) ? working.of(ingredient.id) : null;
    const below = made === null ? [] : unfoldedSteps(made, working, path, depth + 1);
    return [{ ingredient, path, depth, where }, ...below];
  });
}
