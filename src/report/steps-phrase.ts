import type { Case } from '../case/case.ts';
import { kindOfLines } from '../case/route-kind.ts';
import { stageEntries } from '../paper/catalogue.ts';
import type { Plant } from '../paper/plant.ts';

const verbs: Readonly<Record<string, string>> = {
  'slushing pulper': 'slush',
  'vat pulper': 'pulp',
  'drum pulper': 'pulp',
  'broke pulper': 'pulp',
  refiner: 'refine',
  disperser: 'disperse',
  'flotation cell': 'float',
  washer: 'wash',
  'bleaching tower': 'bleach',
  'coarse screen': 'screen',
  'fine screen': 'screen',
  detrashing: 'clean',
  'high-density cleaner': 'clean',
  'forward cleaner': 'clean',
  'lightweight cleaner': 'clean',
};

/** What is done to the largest kind of stock of a route, in a few words and in order: "Slush, refine, screen". Each verb once. */
export function stepsPhrase({ route }: Plant, materials: Case['materials']): string {
  const kind = kindOfLines(route.lines, materials);
  const lines = route.lines.filter((line) => kindOfLines([line], materials) === kind);
  const [longest] = [...lines].sort((a, b) => b.stages.length - a.stages.length);
  const steps = (longest?.stages ?? []).flatMap((stage) => verbs[stageEntries.get(stage.like)?.kind ?? ''] ?? []);
  const once = [...new Set(steps)].join(', ');
  return once.charAt(0).toUpperCase() + once.slice(1);
}
