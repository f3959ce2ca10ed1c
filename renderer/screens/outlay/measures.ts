import type { PlanResults } from '../../../src/index.ts';
import { formatNumber } from '../../../src/wording/number-format.ts';
import type { NumberStyle } from '../../numbers/number-style.ts';
import { rateText } from './plan-sentences.ts';

/** One of the figures under the headline: the figure large, its unit small, what it is below. */
export interface Measure {
  readonly figure: string;
  readonly unit: string;
  readonly words: string;
}

const notYet = 'not yet';

/** Every internal rate by name; that there is none is said as plainly as one. */
export function internalMeasure({ internal, plan }: PlanResults, { locale }: NumberStyle): Measure {
  const name = `internal rate of return, ${plan.money}`;
  if (internal === null) return { figure: notYet, unit: '', words: name };
  if (internal.always) return { figure: 'any', unit: '', words: 'no flows: every rate is an internal rate' };
  const told = internal.rates.map(
    ({ rate, isMeaningless }) => `${rateText(rate, locale, 1)}${isMeaningless ? ' (meaningless)' : ''}`,
  );
  const [only] = internal.rates;
  if (only === undefined) return { figure: 'none', unit: '', words: 'no internal rate of return' };
  if (told.length > 1)
    return { figure: String(told.length), unit: 'rates', words: `${told.join(' and ')}: none of them ranks it` };
  return {
    figure: formatNumber(only.rate * 100, { locale, decimals: 1 }),
    unit: '%',
    words: only.isMeaningless ? `${name}: meaningless` : name,
  };
}

/** Years from the first money, and from the planned start-up. */
export function paybackMeasure(results: PlanResults, first: number, { locale }: NumberStyle): Measure {
  const { payback, plan } = results;
  if (payback === null) return { figure: 'never', unit: '', words: 'paid back within the plan' };
  if (!Number.isFinite(payback)) return { figure: notYet, unit: '', words: 'payback' };
  if (payback === 0) return { figure: 'at once', unit: '', words: 'nothing to be paid back' };
  const years = (value: number): string => formatNumber(value, { locale, decimals: 1 });
  const building = plan.operatesFrom - first;
  const since =
    payback < building ? 'paid back before start-up' : `from first money; ${years(payback - building)} from start-up`;
  return { figure: years(payback), unit: 'years', words: since };
}

export function discountedMeasure({ discountedPayback }: PlanResults, { locale }: NumberStyle): Measure {
  const words = 'discounted payback';
  if (discountedPayback === null) return { figure: 'never', unit: '', words: 'paid back, interest counted' };
  if (!Number.isFinite(discountedPayback)) return { figure: notYet, unit: '', words };
  if (discountedPayback === 0) return { figure: 'at once', unit: '', words };
  return { figure: formatNumber(discountedPayback, { locale, decimals: 1 }), unit: 'years', words };
}

/** How many of a hundred trials end above nothing. What was drawn is never certain, so the ends are said in words. */
export function chanceMeasure(share: number | null): Measure {
  const words = 'trials end above zero';
  if (share === null || Number.isNaN(share)) return { figure: notYet, unit: '', words };
  const of100 = Math.round(share * 100);
  if (of100 >= 100) return { figure: '>\u200a99', unit: 'in 100', words };
  return of100 <= 0 ? { figure: '<\u200a1', unit: 'in 100', words } : { figure: String(of100), unit: 'in 100', words };
}
