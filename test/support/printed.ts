import { type OpenCase, compare, spreadOf } from '../../src/index.ts';
import { statementCsv } from '../../src/report/statement-csv.ts';
import { statementPage } from '../../src/report/statement-page.ts';
import { workbookPlan } from '../../src/workbook/workbook-plan.ts';

/** All that leaves the program about a comparison, as text. */
export function printed(from: OpenCase): { readonly page: string; readonly csv: string; readonly workbook: string } {
  const [comparison, spread] = [compare(from), spreadOf(from, '2026-11-25')];
  return {
    page: statementPage(comparison, spread, 'en'),
    csv: statementCsv(comparison, spread, 'en'),
    workbook: JSON.stringify(workbookPlan(from, { today: '2026-11-25', trials: null, pictures: [] })),
  };
}
