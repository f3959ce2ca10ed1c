import type { TrialSummary } from '../study/uncertainty/trial-summary.ts';
import type { Picture } from './plan.ts';

/** What a workbook says besides the case: all that the engine cannot know by itself. */
export interface WorkbookFacts {
  /** The day it is made, "2026-11-25", by which ages of prices are told; null where nobody says. */
  readonly today: string | null;
  /** Trials of the difference of the whole cost; null where none were drawn. */
  readonly trials: TrialSummary | null;
  /** Pictures of the screen, each with what it shows. */
  readonly pictures: readonly (Pick<Picture, 'png' | 'width' | 'height'> & { readonly title: string })[];
}
