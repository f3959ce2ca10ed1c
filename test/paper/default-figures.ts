import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import type { Figure } from '../../src/paper/figure.ts';

/** A figure of the program's lists, with the place where it stands: "stages.vat.electricity". */
export interface PlacedFigure {
  readonly place: string;
  readonly figure: Figure;
}

const folder = join(import.meta.dirname, '../../src/paper/defaults');
const lists = readdirSync(folder).filter((name) => name.endsWith('.json') && name !== 'sources.json');

/** Every figure of every list, wherever it stands; a list that is added is found by itself. */
export const defaultFigures: readonly PlacedFigure[] = lists.flatMap((name) =>
  figuresIn(name.replace('.json', ''), JSON.parse(readFileSync(join(folder, name), 'utf8'))),
);

function figuresIn(place: string, value: unknown): PlacedFigure[] {
  if (typeof value !== 'object' || value === null) return [];
  if ('value' in value && 'unit' in value) return [{ place, figure: value as Figure }];
  return Object.entries(value).flatMap(([key, inner]) => figuresIn(`${place}.${key}`, inner));
}
