import { type Child, type Markup, element } from './markup.ts';

/** One part of the report, on pages of its own. */
export function part(title: string, note: string, ...children: readonly Child[]): Markup {
  const heading = element('h2', {}, element('span', {}, title), note === '' ? null : element('small', {}, note));
  return element('section', { class: 'part' }, heading, children);
}
