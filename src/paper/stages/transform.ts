import { type Quantity, constant, total } from '../../kernel/expression/quantity.ts';
import type { StageEntry } from '../catalogue.ts';
import { type Component, type Flow, componentLabels, flowOf } from '../components.ts';
import { type Sheet, fraction } from '../sheet.ts';
import type { StagePlace } from './stage-place.ts';

/** A share of one component that a stage turns into another. */
export interface Move {
  readonly from: Component;
  readonly to: Component;
  readonly fraction: Quantity;
}

export function movesOf(sheet: Sheet, place: StagePlace, entry: StageEntry): readonly Move[] {
  return (entry.transforms ?? []).map(({ from, to, fraction: figure }) => ({
    from,
    to,
    fraction: sheet.input({
      id: `${place.id}.turns.${from}-${to}`,
      label: `${componentLabels[from]} that becomes ${componentLabels[to].toLowerCase()}`,
      where: place.where,
      unit: '1',
      figure,
      allowed: fraction,
    }),
  }));
}

/** What a stage turns into something else before it separates: nothing is added and nothing removed. */
export function transformed(moves: readonly Move[], feed: Flow): Flow {
  if (moves.length === 0) return feed;
  return flowOf((component) => {
    const left = moves.filter((move) => move.from === component).map((move) => move.fraction);
    const share = left.length === 0 ? constant('1') : total(left, '1').complement().within({ least: '0' });
    const comes = moves.filter((move) => move.to === component).map((move) => feed[move.from].times(move.fraction));
    return total([feed[component].times(share), ...comes], '1');
  });
}
