import { limitReadings } from '../../../study/limits/limit-readings.ts';
import { scenarioTable } from '../../../study/scenarios/scenario-table.ts';
import type { OpenCase } from '../../../study/open-case.ts';
import { formatNumber } from '../../../wording/number-format.ts';
import { unitLabel } from '../../../wording/unit-label.ts';
import type { Markup } from '../markup.ts';
import type { PaperFacts } from '../paper-facts.ts';
import { significantText } from '../paper-words.ts';
import { part } from '../part.ts';
import { type Row, ruledTable } from '../ruled-table.ts';

/** Scenarios side by side and every limit; null where the case has neither. */
export function scenariosPart({ open }: PaperFacts, locale: string): Markup | null {
  const tables = [scenarios(open, locale), limits(open, locale)].filter((table) => table !== null);
  return tables.length === 0 ? null : part('Scenarios and limits', '', tables);
}

function scenarios(open: OpenCase, locale: string): Markup | null {
  const { columns, inputs, results } = scenarioTable(open);
  if (columns.length < 2) return null;
  const named = (label: string, where: string, unit: string): string =>
    [label, where, unitLabel(unit)].filter((word) => word !== '').join(', ');
  const changed = inputs.map(({ label, where, unit }, row): Row => ({
    cells: [named(label, where, unit), ...columns.map(({ figures }) => figureText(figures[row] ?? '', locale))],
  }));
  const found = results.map(({ label, where, unit }, row): Row => ({
    role: 'group',
    cells: [
      named(label, where, unit),
      ...columns.map(({ values }) => formatNumber(values[row] ?? NaN, { locale, significant: 6 })),
    ],
  }));
  const heads = ['', ...columns.map(({ scenario }) => scenario?.label ?? 'as the case stands')];
  const columnsOf = heads.map((head, place) => ({ head, holds: place === 0 ? 'words' : 'figures' }) as const);
  return ruledTable(columnsOf, [...changed, ...found], 'Scenarios side by side');
}

function figureText(figure: string, locale: string): string {
  return figure === '' ? 'none' : formatNumber(figure, { locale });
}

function limits(open: OpenCase, locale: string): Markup | null {
  const readings = limitReadings(open);
  if (readings.length === 0) return null;
  const heads = ['Limit', 'kind', 'route', '', 'limit', 'comes to', 'kept'];
  const columns = heads.map(
    (head, place) => ({ head, holds: place === 4 || place === 5 ? 'figures' : 'words' }) as const,
  );
  const rows = readings.map(({ limit, routeLabel, unit, value, kept }) => ({
    cells: [
      `${limit.label}, ${unitLabel(unit)}`,
      limit.kind,
      routeLabel,
      limit.sense,
      significantText(limit.value, locale, 6),
      formatNumber(value, { locale, significant: 6 }),
      Number.isNaN(value) ? 'not yet' : kept ? 'yes' : 'NO',
    ],
  }));
  return ruledTable(columns, rows, 'Every limit in every route it watches');
}
