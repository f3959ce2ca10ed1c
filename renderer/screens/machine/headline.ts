import type { BreakEven, MachineEffect, RouteHead, Spread } from '../../../src/index.ts';
import { formatNumber } from '../../../src/wording/number-format.ts';
import { lowerFirst, upperFirst } from '../../numbers/letter-case.ts';
import type { NumberStyle } from '../../numbers/number-style.ts';

type Numbers = Pick<NumberStyle, 'locale' | 'symbol' | 'magnitude'>;

/** What the machine does to the difference, and who costs less after it. */
export function headline(spread: Spread, effect: MachineEffect, numbers: Numbers): string {
  const { costsAlone, takenBack, left } = effect[effect.inForce];
  if (left.shown === '' || takenBack.shown === '') return notYet(effect);
  const other = nameOf(spread.with, spread);
  const [alone, back, rest] = [costsAlone, takenBack, left].map(({ shown }) => Number(shown)) as [
    number,
    number,
    number,
  ];
  const money = (digits: string): string => `${numbers.symbol}${numbers.magnitude(digits)}`;
  const million = (digits: string): string => `${money(digits)} million`;
  const cheaper = rest < 0 ? other : nameOf(spread.base, spread);
  const ends = (how: string): string =>
    rest === 0
      ? 'the two routes then cost the same'
      : `${cheaper} ${how} by ${money(spread.difference.shownPerTonne)} a tonne`;
  if (!effect.isEntered)
    return `No machine effect is entered: both furnishes are taken to run alike, and ${ends('costs less')}.`;
  if (back === 0) return `The machine takes nothing back; ${ends('costs less')}.`;
  const taken = million(takenBack.shown);
  const of = million(costsAlone.shown);
  if (alone === 0) return `Costs alone are the same; with the machine ${ends('costs less')}, ${taken} a year.`;
  if (alone < 0) {
    if (back < 0) return `The machine adds ${taken} to the ${of} that ${other} saves; ${ends('costs less')}.`;
    if (rest < 0) return `The machine takes back ${taken} of the ${of}; ${ends('still costs less')}.`;
    return `The machine turns the answer: it takes back ${taken} where ${other} saves ${of}, and ${ends('costs less')}.`;
  }
  if (back > 0) return `The machine adds ${taken} to the ${of} that ${other} costs more; ${ends('costs less')}.`;
  if (rest > 0)
    return `The machine gives back ${taken} of the ${of} that ${other} costs more; ${ends('still costs less')}.`;
  return `The machine turns the answer: it gives back ${taken} where ${other} costs ${of} more, and ${ends('costs less')}.`;
}

function notYet(effect: MachineEffect): string {
  return effect.inForce === 'soldOut' && !effect.isPriced
    ? 'What the machine takes back cannot be worked out yet: give the price of the product, or what a tonne of it brings.'
    : 'What the machine takes back cannot be worked out yet: see what to look at below.';
}

/** At which speed the answer turns: "Recovered loses if the machine runs 12.8 % slower." */
export function turningSentence(
  spread: Spread,
  effect: MachineEffect,
  turns: BreakEven | null,
  numbers: Numbers,
): string {
  const rest = Number(spread.difference.shownPerTonne);
  if (!isWorthSomething(spread, effect)) return '';
  if (turns === null || spread.difference.shownPerTonne === '' || rest === 0) return '';
  const other = upperFirst(nameOf(spread.with, spread));
  const nearest = [...turns.crossings].sort((a, b) => Math.abs(a - turns.figure) - Math.abs(b - turns.figure))[0];
  if (nearest === undefined) {
    const [from, to] = [turns.from, turns.to].map((end) =>
      formatNumber(end, { locale: numbers.locale, significant: 3 }),
    );
    return `No speed from ${from ?? ''} to ${to ?? ''}\u00a0% turns the answer.`;
  }
  const percent = formatNumber(Math.abs(1 - nearest / turns.figure) * 100, { locale: numbers.locale, decimals: 1 });
  const way = nearest < turns.figure ? 'slower' : 'faster';
  return `${other} ${rest < 0 ? 'loses' : 'wins'} if the machine runs ${percent}\u00a0% ${way}.`;
}

/** While nothing says what a lost tonne or an extra hour is worth, no speed can turn anything, and nothing is to be said of that. */
function isWorthSomething(spread: Spread, { inForce, isPriced, figures }: MachineEffect): boolean {
  return inForce === 'soldOut' ? isPriced : figures[`${spread.with.id}.machineEffect.costPerHour`] !== 0;
}

/** "virgin" and "recovered" where that tells the routes apart, else their own names. */
export function nameOf(route: RouteHead, { base, with: other }: Spread): string {
  return base.kind === other.kind ? lowerFirst(route.label) : route.kind;
}
