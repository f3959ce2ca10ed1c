import { type OpenCase, uncertainty } from '../index.ts';
import { workbookPlan } from '../workbook/workbook-plan.ts';
import { writeXlsx } from '../workbook/write-xlsx.ts';

/** Enough for percentiles to a few per cent of their spread; more are asked for by name. */
export const usualTrials = 1000;

/** A case as the bytes of an .xlsx file. */
export function workbookBytes(open: OpenCase, today: string, trials: number = usualTrials): Promise<Uint8Array> {
  const { totalId } = open.model.difference;
  const isFound = Number.isFinite(open.values.number(totalId));
  const drawn = trials > 0 && isFound ? uncertainty(open, totalId, { trials }) : null;
  return writeXlsx(workbookPlan(open, { today, trials: drawn, pictures: [] }));
}
