import type { Spread } from '../../../src/index.ts';
import type { NumberStyle } from '../../numbers/number-style.ts';
import { formatNumber } from '../../../src/wording/number-format.ts';
import { routeNames, type Facing } from './route-names.ts';
import type { Scale } from './scales.ts';

/** The sentence that answers first, in three parts, since its figure is set bold. */
export interface Headline {
  readonly before: string;
  readonly figure: string;
  /** After the figure and "CO2e". */
  readonly after: string;
}

/** The caution that forbids to call one route better, if it stands. */
export function closeCall(warnings: Spread['warnings']): string | null {
  return warnings.find(({ id }) => id.startsWith('too close to call'))?.sentence ?? null;
}

/** What else stands in the way of saying in public what the page says. */
export function claimWarnings(warnings: Spread['warnings']): readonly string[] {
  const kinds = ['mixed years', 'unsourced factors'];
  return warnings.filter(({ id }) => kinds.some((kind) => id.startsWith(kind))).map(({ sentence }) => sentence);
}

export function headline(facing: Facing, scale: Scale, per: string, isClose: boolean, numbers: NumberStyle): Headline {
  const difference = (facing.with.total - facing.base.total) * scale.factor;
  const name = routeNames(facing).with;
  if (Number.isNaN(difference))
    return { before: 'The carbon of the two routes cannot be worked out yet.', figure: '', after: '' };
  const amount = formatNumber(Math.abs(difference), { locale: numbers.locale, decimals: 0 });
  const figure = `${amount}\u00a0${scale.unit}`;
  const less = difference <= 0 ? 'less' : 'more';
  return isClose
    ? {
        before: `Too close to call: ${name.charAt(0).toLowerCase()}${name.slice(1)} carries`,
        figure,
        after: `${per} ${less}.`,
      }
    : { before: `${name} carries`, figure, after: `${per} ${less}.` };
}
