import { formatNumber } from '../../wording/number-format.ts';
import { type BridgeBar, type BridgeLayout, layOutBridge } from '../bridge-layout.ts';
import type { Spread } from '../spread.ts';
import { fleckPattern } from './fleck.ts';
import { type Markup, element } from './markup.ts';
import { currencySymbol } from './paper-words.ts';

const size = { width: 680, height: 150, above: 18, below: 22 };
const teeth = [-3, 1, -2.5, 2, -3.5, 0.5, -2, 2.5];

/** The bridge from one route to the other, drawn for paper; null while one of its figures cannot be worked out. */
export function bridgeDrawing(spread: Spread, locale: string): Markup | null {
  const layout = layOutBridge(spread, size);
  if (layout === null) return null;
  const scale =
    layout.startsAt === 0
      ? ''
      : ` Torn foot: the scale starts at ${formatNumber(layout.startsAt, { locale, decimals: 0 })}.`;
  const note = `${currencySymbol(spread.currency, locale)} a tonne.${scale} Plain: “${spread.base.label}” pays; flecked: “${spread.with.label}” pays.`;
  return element(
    'section',
    {},
    element('h2', {}, element('span', {}, 'From one route to the other'), element('small', {}, note)),
    picture(layout, spread, locale),
  );
}

function picture(layout: BridgeLayout, { base, with: other }: Spread, locale: string): Markup {
  const ends = [base, other].map(
    ({ label, total }) => `${label} ${formatNumber(total.shownPerTonne, { locale, decimals: 2 })}`,
  );
  const title = `Bridge: ${ends.join(', ')}.`;
  return element(
    'svg',
    { viewBox: `0 0 ${String(size.width)} ${String(size.height)}`, role: 'img', 'aria-label': title },
    fleckPattern('fleck-bridge'),
    layout.bars.map((bar, place) => column(bar, layout, layout.bars[place + 1], locale)),
    element('line', { x1: 0, x2: size.width, y1: layout.ground, y2: layout.ground, class: 'rule' }),
  );
}

function column(bar: BridgeBar, layout: BridgeLayout, next: BridgeBar | undefined, locale: string): readonly Markup[] {
  const middle = bar.x + bar.width / 2;
  const height = Math.max(bar.bottom - bar.top, 0.8);
  const place = { x: bar.x, y: bar.top, width: bar.width, height };
  const body =
    bar.kind === 'recovered'
      ? element('rect', { ...place, fill: 'url(#fleck-bridge)', class: 'flecked' })
      : element('rect', { ...place, class: 'plain' });
  const strong = bar.isStep ? null : 'strong';
  const figure = formatNumber(bar.digits, { locale, decimals: 2, sign: bar.isStep });
  const words = (y: number, text: string): Markup =>
    element('text', { x: middle, y, 'text-anchor': 'middle', class: strong }, text);
  return [
    body,
    ...(!bar.isStep && layout.startsAt > 0 ? [tear(bar, layout.ground)] : []),
    words(bar.top - 4, figure),
    words(layout.ground + 13, shortened(bar.label)),
    ...(next === undefined
      ? []
      : [element('line', { x1: bar.x + bar.width, x2: next.x, y1: bar.level, y2: bar.level, class: 'thin' })]),
  ];
}

function tear({ x, width }: BridgeBar, ground: number): Markup {
  const points = teeth.map(
    (rise, place) => [x - 1 + ((width + 2) * place) / (teeth.length - 1), ground - 9 + rise] as const,
  );
  const upper = points.map(([left, top]) => `${left.toFixed(2)},${top.toFixed(2)}`);
  const lower = points.map(([left, top]) => `${left.toFixed(2)},${(top + 4.5).toFixed(2)}`).reverse();
  return element('polygon', { points: [...upper, ...lower].join(' '), class: 'torn' });
}

// Eight bars share the width of a page; a name longer than its column is cut, and stands in full beside the picture.
const lettersThatFit = 16;

function shortened(label: string): string {
  return label.length <= lettersThatFit ? label : `${label.slice(0, lettersThatFit - 1).trimEnd()}…`;
}
