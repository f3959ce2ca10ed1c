import type { Case, Destination } from '../case/case.ts';
import { residueEntries } from './catalogue.ts';

/** Destinations that can take a stream: the boiler burns no ash of its own. In a year of the plan only those that are open then. */
export function openTo(content: Case, mayBurn: boolean, year?: number): readonly Destination[] {
  return content.destinations.filter(
    ({ id, kind }) => (mayBurn || kind !== 'own boiler') && (year === undefined || isOpenIn(content, id, year)),
  );
}

/**
 * Where goes what the shares of a stream leave: where such a stream usually goes, else to the first place that is paid for taking it; to a
 * buyer or to the own boiler only where there is no other.
 */
export function balanceOf(stream: string, open: readonly Destination[]): Destination | undefined {
  const usual = residueEntries.get(stream)?.split ?? {};
  return (
    open.find(({ kind }) => kind in usual) ?? open.find(({ kind }) => !['own boiler', 'sale'].includes(kind)) ?? open[0]
  );
}

/** Names a stream's share to a destination; before it stands where it holds, behind it from which year of the plan on. */
export const shareStem = (stream: string, destination: string): string => `residue.${stream}.to.${destination}`;

/** Destinations that take a stream in some year of the plan, though perhaps not today. */
export function destinationsOfYears(content: Case, stream: string, mayBurn: boolean): ReadonlySet<string> {
  const { investment } = content;
  if (investment === undefined) return new Set();
  const years = Array.from({ length: investment.years + 1 }, (_, year) => year);
  const given = content.destinations.filter(({ id }) =>
    years.some((year) => Object.hasOwn(content.inputs, `investment.${shareStem(stream, id)}.${String(year)}`)),
  );
  const balances =
    (investment.outlets ?? []).length === 0
      ? []
      : years.map((year) => balanceOf(stream, openTo(content, mayBurn, year)));
  return new Set([...given, ...balances].flatMap((each) => each?.id ?? []));
}

function isOpenIn({ investment }: Case, destination: string, year: number): boolean {
  const outlet = investment?.outlets?.find((each) => each.destination === destination);
  return outlet === undefined || (outlet.first <= year && year <= outlet.last);
}
