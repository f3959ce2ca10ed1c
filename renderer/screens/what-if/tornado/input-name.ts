import type { Spread, Swing } from '../../../../src/index.ts';
import { routeWords } from './result-words.ts';

type Named = Pick<Swing, 'label' | 'where'>;

/** Where an input belongs, short: the route by its kind ("recovered, machine"), anything else as it is. */
export function shortWhere(where: string, spread: Spread): string {
  const words = routeWords(spread);
  const routes = [
    { label: spread.base.label, word: words.base },
    { label: spread.with.label, word: words.other },
  ];
  const named = routes.find(({ label }) => where === label || where.startsWith(`${label}, `));
  return named === undefined ? where : named.word + where.slice(named.label.length);
}

/** "Other machine heat (recovered, machine)". */
export function inputName({ label, where }: Named, spread: Spread): string {
  return where === '' ? label : `${label} (${shortWhere(where, spread)})`;
}

/** Everything that is known of its place, for a title: "Other machine heat, Recovered middle ply, machine". */
export function fullName({ label, where }: Named): string {
  return where === '' ? label : `${label}, ${where}`;
}
