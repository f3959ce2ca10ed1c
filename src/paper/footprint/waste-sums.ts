import { type Quantity, total } from '../../kernel/expression/quantity.ts';
import type { Plant } from '../plant.ts';
import type { Residue } from '../residue.ts';
import type { Sheet } from '../sheet.ts';

export type MassKind = 'wet' | 'dry';

/** All residues of a route, or those that go to one destination. */
export function wasteIdOf(routeId: string, kind: MassKind, destination?: string): string {
  return `${routeId}.residue.all.${kind}${destination === undefined ? '' : `.${destination}`}`;
}

/** Everything that leaves beside the product, in all and by destination, wet as hauled and dry. */
export function wasteSums(sheet: Sheet, { route }: Plant, streams: readonly Residue[]): void {
  const units = { wet: 'wet-t/t', dry: 'bdt/t' } as const;
  const define = (kind: MassKind, masses: readonly Quantity[], label: string, destination?: string): void => {
    const suffix = kind === 'wet' ? 'as hauled' : 'dry';
    sheet.define(
      wasteIdOf(route.id, kind, destination),
      `${label}, ${suffix}`,
      units[kind],
      total(masses, units[kind]),
      { where: route.label },
    );
  };
  for (const kind of ['wet', 'dry'] as const) {
    define(
      kind,
      streams.map((stream) => stream[kind]),
      'All residues',
    );
    for (const destination of sheet.case.destinations) {
      const there = streams.flatMap((stream) =>
        stream.parts
          .filter((part) => part.destination.id === destination.id)
          .map((part) => (kind === 'wet' ? part.wet : stream.dry.times(part.share))),
      );
      define(kind, there, `All residues to ${destination.label.toLowerCase()}`, destination.id);
    }
  }
}
