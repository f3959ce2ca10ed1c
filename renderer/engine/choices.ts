import {
  materialChoices,
  productChoices,
  stageChoices,
  type MaterialChoice,
  type ProductChoice,
  type StageChoice,
} from '../../src/index.ts';

/** What the program's own lists offer: stages for a train, grades to buy, products to start from. */
export interface Choices {
  readonly stages: readonly StageChoice[];
  readonly materials: readonly MaterialChoice[];
  readonly products: readonly ProductChoice[];
}

export function choices(): Choices {
  return { stages: stageChoices(), materials: materialChoices(), products: productChoices() };
}
