import type { Spread } from '../../../../../src/index.ts';
import { inputName } from '../../tornado/input-name.ts';
import type { InputChoice } from '../input-choices.ts';

/** Inputs that are prices of bought materials. */
export function monthPrices(spread: Spread): readonly InputChoice[] {
  return Object.values(spread.inputs)
    .filter(({ id }) => /^material\.[^.]+\.price$/u.test(id))
    .map((input) => ({ value: input.id, label: inputName(input, spread) }));
}
