import { type OpenCase, type QualityRow, formatNumber, qualityResults, unitLabel } from '../index.ts';
import { textTable } from '../report/text-table.ts';
import type { Console } from './console.ts';
import { type SetOptions, openWithSets, wholly } from './open-with-sets.ts';

export interface QualityOptions extends SetOptions {
  readonly json?: boolean;
}

/** Prints what the product carries, its brightness, what the water loop carries and what strength asks for, by route. */
export function showQuality(console: Console, file: string, options: QualityOptions): void {
  const open = wholly(openWithSets(file, options));
  const rows = qualityResults(open);
  if (options.json === true) {
    const service = open.content.routes.map(({ id, service: chosen }) => ({
      route: id,
      service: chosen ?? 'as given',
    }));
    console.say(`${JSON.stringify({ rows, service }, null, 2)}\n`);
    return;
  }
  console.say(`${table(open, rows, console.locale)}\n\n${serviceSentences(open).join('\n')}\n`);
}

function table({ content }: OpenCase, rows: readonly QualityRow[], locale: string): string {
  const number = (value: number): string => formatNumber(value, { locale, significant: 4 });
  const columns = [
    { head: 'Quality', holds: 'words' },
    { head: 'unit', holds: 'words' },
    ...content.routes.map(({ label }) => ({ head: label, holds: 'figures' }) as const),
  ] as const;
  const cell = ({ sense }: QualityRow, { value, limit }: QualityRow['routes'][number]): string => {
    if (value === null) return '';
    return limit === null || sense === null ? number(value) : `${number(value)} (${sense} ${number(limit)})`;
  };
  return textTable(
    columns,
    rows.map((row) => [row.label, unitLabel(row.unit), ...row.routes.map((each) => cell(row, each))]),
  );
}

/** Whether the tonnes for the same service are somebody's figure or what strength asks for. */
function serviceSentences({ content, values }: OpenCase): readonly string[] {
  return content.routes.map(({ id, label, service }) => {
    if (service === 'from strength') return `${label}: tonnes for the same service are what strength asks for.`;
    return values.has(`${id}.quality.serviceFactor`)
      ? `${label}: tonnes for the same service are as given; what strength asks for is only shown.`
      : `${label}: tonnes for the same service are as given; no strength of its lines is known.`;
  });
}
