import type { CarbonPriceScheme, Case } from '../case.ts';
import type { CarbonPriceOptions } from './edit.ts';

/** Changes what the price of carbon is paid on, and how free allocation is seen; an option given as null is left out again. */
export function setCarbonPrice(content: Case, options: CarbonPriceOptions): Case {
  const { carbonPrice: before, ...rest } = content;
  const chosen = Object.entries({ ...before, ...options }).filter(([, option]) => option !== null);
  const carbonPrice = Object.fromEntries(chosen) as CarbonPriceScheme;
  return chosen.length === 0 ? rest : { ...rest, carbonPrice };
}
