import type { Provenance, Status } from '../kernel/graph/input-declaration.ts';
import sources from './defaults/sources.json' with { type: 'json' };

/** A default of the program: the usual figure, its usual range, and the row it comes from ("practice" where there is none). */
export interface Figure {
  readonly value: string;
  readonly low: string;
  readonly high: string;
  readonly unit: string;
  readonly source: string;
  readonly status: Status;
  readonly note?: string;
  /** Further facts that belong to the figure: a carbon factor's year, boundary, rules. */
  readonly details?: Readonly<Record<string, string>>;
}

interface SourceRow {
  readonly title: string;
  readonly publisher?: string;
  readonly year?: string;
  readonly locator?: string;
  readonly status: string;
}

const rows = new Map<string, SourceRow>(Object.entries(sources));
const unsourced = 'Common practice, no source';

/** Where a default comes from, in words. A figure chosen inside a source's range is common practice and says so. */
export function provenanceOf(figure: Figure): Provenance {
  const row = rows.get(figure.source);
  const note = {
    ...(figure.note === undefined ? {} : { note: figure.note }),
    ...(figure.details === undefined ? {} : { details: figure.details }),
  };
  if (row === undefined || row.title === unsourced) return { status: figure.status, source: unsourced, ...note };
  const cited = [row.title, row.publisher, row.year, row.locator].filter((part) => part !== undefined).join(', ');
  return {
    status: figure.status,
    source: figure.status === 'practice' ? `Common practice, within the range of: ${cited}` : cited,
    ...note,
  };
}

/** A default that no reference row gives, with its usual range; `status` is "practice" unless it holds by definition. */
export function plainFigure(
  value: string,
  low: string,
  high: string,
  unit: string,
  status: Status = 'practice',
  note?: string,
): Figure {
  return { value, low, high, unit, source: 'practice', status, ...(note === undefined ? {} : { note }) };
}
