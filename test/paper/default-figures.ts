import chemicals from '../../src/paper/defaults/chemicals.json' with { type: 'json' };
import factors from '../../src/paper/defaults/factors.json' with { type: 'json' };
import machineChemicals from '../../src/paper/defaults/machine-chemicals.json' with { type: 'json' };
import machines from '../../src/paper/defaults/machines.json' with { type: 'json' };
import materials from '../../src/paper/defaults/materials.json' with { type: 'json' };
import residues from '../../src/paper/defaults/residues.json' with { type: 'json' };
import variants from '../../src/paper/defaults/stage-variants.json' with { type: 'json' };
import stages from '../../src/paper/defaults/stages.json' with { type: 'json' };
import templates from '../../src/paper/defaults/templates.json' with { type: 'json' };
import type { Figure } from '../../src/paper/figure.ts';

/** A figure of the program's lists, with the place where it stands: "stages.vat.electricity". */
export interface PlacedFigure {
  readonly place: string;
  readonly figure: Figure;
}

/** Every figure of every list, wherever it stands. */
export const defaultFigures: readonly PlacedFigure[] = figuresIn('', {
  chemicals,
  factors,
  'machine-chemicals': machineChemicals,
  machines,
  materials,
  residues,
  'stage-variants': variants,
  stages,
  templates,
});

function figuresIn(place: string, value: unknown): PlacedFigure[] {
  if (typeof value !== 'object' || value === null) return [];
  if ('value' in value && 'unit' in value) return [{ place, figure: value as Figure }];
  return Object.entries(value).flatMap(([key, inner]) => figuresIn(place === '' ? key : `${place}.${key}`, inner));
}
