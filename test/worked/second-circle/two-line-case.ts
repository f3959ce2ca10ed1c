import type { Case, Line, Route } from '../../../src/case/case.ts';
import { smallCase } from '../../support/small-case.ts';

/** A small case whose route "mill" has two lines, "one" with the share given and "two" with what it leaves. */
export function twoLineCase(
  share: string,
  figures: Readonly<Record<string, string>>,
  { stages = [{ id: 'slush', like: 'pumps' }], ...route }: Partial<Route> & { readonly stages?: Line['stages'] } = {},
): Case {
  const line = (id: string, label: string): Line => ({ id, label, recipe: [{ material: 'paper' }], stages });
  return smallCase({
    stages,
    route: { lines: [line('one', 'One'), line('two', 'Two')], balance: 'two', ...route },
    figures: { 'mill.one.share': share, ...figures },
  });
}
