import type { Lot, LotFigure } from '../../case/lots.ts';
import { loadFreight } from './lot-money.ts';
import type { LotNote } from './lot-note.ts';

/** Freight of a tonne as received; `usual` is what the line's own paper pays. NaN, with a note, where something is missing. */
export function lotFreight({ delivery, figures }: Lot, usual: number, notes: LotNote[]): number {
  const needed = (figure: LotFigure): number => {
    const value = figures[figure];
    if (value === undefined) notes.push({ kind: 'lacks', figure });
    return Number(value ?? NaN);
  };
  switch (delivery) {
    case 'delivered':
      return 0;
    case 'ex works':
      if (figures.freight !== undefined) return Number(figures.freight);
      if (usual !== 0) notes.push({ kind: 'usual freight', freight: usual });
      return usual;
    case 'ex works by distance':
      return needed('distance') * needed('freightRate');
    case 'ex works by load': {
      const holds = figures.volume === undefined ? Infinity : Number(figures.volume);
      return loadFreight({
        money: needed('loadMoney'),
        backhaul: Number(figures.backhaul ?? 0) / 100,
        payload: needed('payload'),
        volume: holds,
        density: holds === Infinity ? 1 : needed('baleDensity'),
      });
    }
  }
}
