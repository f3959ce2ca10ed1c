import type { NamedSide } from '../../../../src/index.ts';
import { formatNumber } from '../../../../src/wording/number-format.ts';

const digitsOfSteps = 12;

/** Figures of one side of a table, all with as many decimals as the longest needs. */
export function sideFigures({ figures }: Pick<NamedSide, 'figures'>, locale: string): readonly string[] {
  const decimals = Math.max(0, ...figures.map(decimalsOf));
  return figures.map((figure) => formatNumber(figure, { locale, decimals }));
}

function decimalsOf(figure: number): number {
  const [, fraction = ''] = Number(figure.toPrecision(digitsOfSteps)).toString().split('.');
  return fraction.length;
}

/** Every so many figures are written, counted from today's, so that each has `room` pixels. */
export function writtenPlaces(count: number, today: number, step: number, room: number): readonly number[] {
  const every = Math.max(1, Math.ceil(room / Math.max(step, 0.01)));
  return Array.from({ length: count }, (_, place) => place).filter((place) => (place - today) % every === 0);
}
