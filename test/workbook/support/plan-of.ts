import type { OpenCase } from '../../../src/study/open-case.ts';
import type { WorkbookPlan } from '../../../src/workbook/plan.ts';
import { workbookPlan } from '../../../src/workbook/workbook-plan.ts';

/** The workbook of a case without trials, which no formula follows. */
export function planOf(open: OpenCase): WorkbookPlan {
  return workbookPlan(open, { today: null, trials: null, pictures: [] });
}
