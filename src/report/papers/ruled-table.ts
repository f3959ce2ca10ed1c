import { type Child, type Markup, element } from './markup.ts';

/** A column: its heading, and whether figures or words stand in it. The first column of words names the row. */
export interface Column {
  readonly head: Child;
  readonly holds: 'words' | 'figures';
}

export interface Row {
  readonly cells: readonly Child[];
  /** A band of its own, a sum, or a line like others. */
  readonly role?: 'group' | 'total';
}

/** A table whose heading is repeated on every page it runs over. */
export function ruledTable(columns: readonly Column[], rows: readonly Row[], caption: string): Markup {
  const classOf = (place: number): string | null => (columns[place]?.holds === 'figures' ? 'figures' : null);
  const head = columns.map((column, place) => element('th', { scope: 'col', class: classOf(place) }, column.head));
  const body = rows.map(({ cells, role }) =>
    element(
      'tr',
      { class: role ?? null },
      cells.map((cell, place) =>
        place === 0 ? element('th', { scope: 'row' }, cell) : element('td', { class: classOf(place) }, cell),
      ),
    ),
  );
  return element(
    'table',
    {},
    element('caption', {}, caption),
    element('thead', {}, element('tr', {}, head)),
    element('tbody', {}, body),
  );
}
