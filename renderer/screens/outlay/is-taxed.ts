import type { InputView } from '../../../src/index.ts';

/** Whether any tax is taken from the plan, in all years or in one. */
export function isTaxed(inputs: Readonly<Record<string, InputView>>): boolean {
  return Object.values(inputs).some(
    ({ id, value }) => /^investment\.taxRate(?:\.\d+)?$/u.test(id) && Number(value) !== 0,
  );
}
