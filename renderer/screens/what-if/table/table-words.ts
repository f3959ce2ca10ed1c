import type { NamedSide, Spread, WhatIfTable } from '../../../../src/index.ts';
import { formatNumber } from '../../../../src/wording/number-format.ts';
import { lowerFirst } from '../../../numbers/letter-case.ts';
import type { NumberStyle } from '../../../numbers/number-style.ts';
import { inputName } from '../tornado/input-name.ts';
import { type ResultWords, routeWords } from '../tornado/result-words.ts';
import { winningSide } from '../tornado/winning-side.ts';

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

/** "€/t, recovered less virgin"; of a present value, which is no difference, its terms: "€ million, real, prices of 2024, before financing". */
export function basisWords(words: ResultWords, spread: Spread, terms: string): string {
  if (terms !== '') return `${words.unit}, ${terms}`;
  const { base, other } = routeWords(spread);
  return `${words.unit}, ${other} less ${base}`;
}

/** The main finding in a sentence: who wins in how many cells, and what stands today. */
export function tableFinding(table: WhatIfTable, words: ResultWords, spread: Spread, locale: string): string {
  const values = table.cells.flat();
  const sides = values.map((value) => winningSide(value, words.winsBelow));
  const count = (side: 'with' | 'base'): number => sides.filter((each) => each === side).length;
  const names = [table.across, table.down].map((side) => lowerFirst(inputName(side, spread)));
  const won = [
    count('with') > 0 ? `${words.withWins} in ${String(count('with'))}` : '',
    count('base') > 0 ? `${words.baseWins} in ${String(count('base'))}` : '',
  ].filter((part) => part !== '');
  const found = won.length === 0 ? 'nothing can be worked out' : `${won.join(', ')} of ${String(values.length)} cells`;
  const today = table.cells[table.down.today]?.[table.across.today] ?? NaN;
  const form = { locale, decimals: words.decimals, sign: words.sign };
  return `Over ${names.join(' and ')}: ${found}; as today ${formatNumber(today, form)} ${words.unit}.`;
}

/** Names of the limits that any cell breaks. */
export function brokenLimits({ broken }: Pick<WhatIfTable, 'broken'>): readonly string[] {
  return [...new Set(broken.flat(2).map(({ label }) => label))];
}
