/** Markup that was made here: whatever a person typed stands in it as text, never as markup. */
export class Markup {
  readonly html: string;
  constructor(html: string) {
    this.html = html;
  }
}

export type Child = Markup | string | number | null | readonly Child[];
export type Attributes = Readonly<Record<string, string | number | null>>;

const entities: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};
const childless = new Set(['meta', 'link', 'br', 'col', 'rect', 'circle', 'line', 'path', 'polygon']);

/** Text as markup shows it; characters that no document may hold are left out. */
export function escaped(text: string): string {
  return text
    .replace(/[&<>"']/gu, (mark) => entities[mark] ?? mark)
    .replace(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]/gu, '');
}

/** One element. Attributes that are null are left out. */
export function element(name: string, attributes: Attributes = {}, ...children: readonly Child[]): Markup {
  const written = Object.entries(attributes)
    .filter(([, value]) => value !== null)
    .map(([key, value]) => ` ${key}="${escaped(String(value))}"`)
    .join('');
  const open = `<${name}${written}>`;
  return new Markup(childless.has(name) ? open.replace(/>$/u, '/>') : `${open}${inside(children)}</${name}>`);
}

function inside(children: readonly Child[]): string {
  return children.map((child) => htmlOf(child)).join('');
}

function htmlOf(child: Child): string {
  if (child === null) return '';
  if (child instanceof Markup) return child.html;
  return typeof child === 'object' ? inside(child) : escaped(String(child));
}
