import type { NamedSide, Spread, WhatIfTable } from '../../../../src/index.ts';
import { formatNumber } from '../../../../src/wording/number-format.ts';
import { lowerFirst } from '../../../numbers/letter-case.ts';
import type { NumberStyle } from '../../../numbers/number-style.ts';
import { inputName } from '../tornado/input-name.ts';
import { type ResultWords, routeWords } from '../tornado/result-words.ts';

/** What stands along one side: the unit by itself, so that it is never cut. */
export interface SideName {
  readonly name: string;
  readonly unit: string;
}

export function sideName(
  side: Pick<NamedSide, 'label' | 'where' | 'unit'>,
  spread: Spread,
  numbers: NumberStyle,
): SideName {
  return { name: inputName(side, spread), unit: numbers.unit(side.unit) };
}

/** "Net price agreed (Mixed papers and boards), €/t as received". */
export function sideWords({ name, unit }: SideName): string {
  return unit === '' ? name : `${name}, ${unit}`;
}

/** "€/t, recovered less virgin". */
export function basisWords(words: ResultWords, spread: Spread): string {
  const { base, other } = routeWords(spread);
  return `${words.unit}, ${other} less ${base}`;
}

/** The main finding in a sentence: who wins in how many cells, and what stands today. */
export function tableFinding(table: WhatIfTable, words: ResultWords, spread: Spread, locale: string): string {
  const values = table.cells.flat();
  const below = values.filter((value) => value < 0).length;
  const above = values.filter((value) => value > 0).length;
  const names = [table.across, table.down].map((side) => lowerFirst(inputName(side, spread)));
  const won = [
    below > 0 ? `${words.withWins} in ${String(below)}` : '',
    above > 0 ? `${words.baseWins} in ${String(above)}` : '',
  ].filter((part) => part !== '');
  const found = won.length === 0 ? 'nothing can be worked out' : `${won.join(', ')} of ${String(values.length)} cells`;
  const today = table.cells[table.down.today]?.[table.across.today] ?? NaN;
  const form = { locale, decimals: words.decimals, sign: true };
  return `Over ${names.join(' and ')}: ${found}; as today ${formatNumber(today, form)} ${words.unit}.`;
}

/** Names of the limits that any cell breaks. */
export function brokenLimits({ broken }: Pick<WhatIfTable, 'broken'>): readonly string[] {
  return [...new Set(broken.flat(2).map(({ label }) => label))];
}
