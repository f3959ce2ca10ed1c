import type { InputDeclaration } from '../../kernel/graph/input-declaration.ts';
import { heads, number, text } from '../cells.ts';
import type { Verdict } from '../checks/verdict.ts';
import type { ModelCells } from '../model/model-cells.ts';
import type { SheetPlan } from '../plan.ts';
import { framed } from './framed.ts';

/** Every source that a figure in force comes from, and the figures that rest on it. */
export function sourcesSheet(cells: ModelCells, name: string, verdict: Verdict): SheetPlan {
  const found = new Map<string, { status: string; inputs: InputDeclaration[] }>();
  for (const input of cells.open.model.graph.inputs) {
    const { source, status } = input.given?.provenance ?? input.usual.provenance;
    const known = found.get(source) ?? { status, inputs: [] };
    known.inputs.push(input);
    found.set(source, known);
  }
  const rows = [...found].sort(([, a], [, b]) => b.inputs.length - a.inputs.length);
  return framed({
    name,
    title: 'Sources',
    says: 'Where the figures in force come from. What is "from memory" or "common practice" says so; what is "invented" is for demonstration only.',
    verdict,
    heads: heads('Source', 'Rests on', 'Figures', 'Which'),
    widths: [90, 14, 10, 120],
    rows: rows.map(([source, { status, inputs }]) => [
      text(source),
      text(status === 'none' ? 'no source' : status),
      number(inputs.length, 'whole'),
      text(inputs.map(({ id }) => id).join(', ')),
    ]),
  });
}
