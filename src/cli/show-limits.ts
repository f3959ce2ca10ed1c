import { type LargestShare, type OpenCase, formatNumber, largestShare, limitReadings, unitLabel } from '../index.ts';
import { textTable } from '../report/text-table.ts';
import type { Console } from './console.ts';
import { type SetOptions, openWithSets, wholly } from './open-with-sets.ts';

export interface LimitsOptions extends SetOptions {
  readonly json?: boolean;
}

/** Prints every limit beside what each route comes to, and how far the recovered share can go within them. */
export function showLimits(console: Console, file: string, options: LimitsOptions): void {
  const open = wholly(openWithSets(file, options));
  const limits = limitReadings(open);
  const shares = open.content.routes.map(({ id }) => ({ route: id, share: largestShare(open, id) }));
  if (options.json === true) {
    console.say(`${JSON.stringify({ limits, shares }, null, 2)}\n`);
    return;
  }
  if (limits.length === 0) {
    console.say('This case has no limits.\n');
    return;
  }
  const sentences = shares.map(({ route, share }) => shareSentence(open, route, share, console.locale));
  console.say(`${[table(open, console.locale), '', ...sentences].join('\n')}\n`);
}

function table(open: OpenCase, locale: string): string {
  const number = (value: number | string): string => formatNumber(value, { locale, significant: 6 });
  const heads = ['limit', 'kind', 'route', 'unit', '', 'value', 'comes to', 'kept', 'holds', 'source'];
  const rows = limitReadings(open).map(({ limit, routeLabel, unit, value, kept }) => [
    limit.label,
    limit.kind,
    routeLabel,
    unitLabel(unit),
    limit.sense,
    number(limit.value),
    Number.isNaN(value) ? 'not yet' : number(value),
    Number.isNaN(value) ? '' : kept ? 'yes' : 'NO',
    [limit.from === undefined ? '' : `from ${limit.from}`, limit.until === undefined ? '' : `until ${limit.until}`]
      .filter((part) => part !== '')
      .join(' '),
    limit.source ?? '',
  ]);
  return textTable(
    heads.map((head) => ({ head, holds: head === 'value' || head === 'comes to' ? 'figures' : 'words' })),
    rows,
  );
}

function shareSentence({ content }: OpenCase, route: string, share: LargestShare | null, locale: string): string {
  const label = content.routes.find(({ id }) => id === route)?.label ?? route;
  if (share === null) return `${label}: its recovered share is fixed, for lines of one kind only stand in it.`;
  // Rounded down: at the share that is told every limit must still hold.
  const percent = (value: number): string =>
    `${formatNumber(Math.floor(value * 1000 + 1e-9) / 10, { locale, decimals: 1 })} %`;
  const names = share.binding.map((limit) => limit.label).join(', ');
  const now = `${label}: recovered share ${percent(share.now)} now`;
  if (share.largest === null) return `${now}; no share keeps all limits: ${names} cannot be kept.`;
  if (share.binding.length === 0) return `${now}; all limits are kept up to ${percent(share.largest)}.`;
  return `${now}; at most ${percent(share.largest)} within all limits; what binds is ${names}.`;
}
