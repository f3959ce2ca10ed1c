import { type Quantity, constant, total } from '../../kernel/expression/quantity.ts';
import type { StageEntry } from '../catalogue.ts';
import { type Component, type Flow, componentLabels, flowOf } from '../components.ts';
import { type Sheet, fraction } from '../sheet.ts';
import type { StagePlace } from './stage-place.ts';

interface Move {
  readonly from: Component;
  readonly to: Component;
  readonly fraction: Quantity;
}

/** What a stage turns into something else before it separates: nothing is added and nothing removed. */
export function transformed(sheet: Sheet, place: StagePlace, entry: StageEntry, feed: Flow): Flow {
  const moves = (entry.transforms ?? []).map(({ from, to, fraction: figure }): Move => {
    const label = `${componentLabels[from]} that becomes ${componentLabels[to].toLowerCase()}`;
    return {
      from,
      to,
      fraction: sheet.input({
        id: `${place.id}.turns.${from}-${to}`,
        label,
        where: place.where,
        unit: '1',
        figure,
        allowed: fraction,
      }),
    };
  });
  if (moves.length === 0) return feed;
  return flowOf((component) => {
    const left = moves.filter((move) => move.from === component).map((move) => move.fraction);
    const stays = feed[component].times(
      left.length === 0 ? constant('1') : total(left, '1').complement().within({ least: '0' }),
    );
    const comes = moves.filter((move) => move.to === component).map((move) => feed[move.from].times(move.fraction));
    return total([stays, ...comes], '1');
  });
}
