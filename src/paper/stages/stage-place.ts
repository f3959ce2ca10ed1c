import type { Stage } from '../../case/case.ts';

/** Where a stage stands: the beginning of the ids of its inputs and results, and the words that say so. */
export interface StagePlace {
  readonly id: string;
  readonly where: string;
  readonly stage: Stage;
  /** Id of the line's feed, bdt/t, which is worked out after the stages. */
  readonly lineFeedId: string;
  /** Id of the tonnes that the route makes for the same service. */
  readonly serviceId: string;
}
