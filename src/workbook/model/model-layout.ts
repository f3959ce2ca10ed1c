import type { InputDeclaration } from '../../kernel/graph/input-declaration.ts';
import { type Graph, nodeAt } from '../../kernel/graph/graph.ts';
import type { OpenCase } from '../../study/open-case.ts';
import { DefinedNames } from '../formulas/defined-names.ts';
import { roundingName } from '../formulas/formula-reading.ts';
import type { CellPlace } from '../plan.ts';
import type { SheetNames } from '../sheet-names.ts';
import { type Calculation, calculationOf } from './calculation-blocks.ts';
import { firstRow, firstYearColumn, inputColumns, valueColumn } from './geometry.ts';
import { type InputSection, inputSections } from './input-sections.ts';
import { type YearStepRow, placeYearSteps } from './year-steps.ts';
import { type YearRow, yearRows } from './year-rows.ts';

/** A row of a sheet of calculation: the heading of a block, a quantity, or nothing. */
export type LaidRow =
  | { readonly kind: 'block'; readonly title: string }
  | { readonly kind: 'node'; readonly index: number }
  | { readonly kind: 'space' };

/** Which cell each node of the graph stands in, and by which name; and what stands on the sheets that hold them. */
export interface ModelLayout {
  readonly places: ReadonlyMap<number, CellPlace>;
  readonly names: ReadonlyMap<number, string>;
  readonly owners: readonly number[];
  readonly calculation: readonly { readonly name: string; readonly title: string; readonly rows: readonly LaidRow[] }[];
  readonly fixed: { readonly name: string; readonly nodes: readonly number[] };
  readonly inputs: {
    readonly name: string;
    readonly sections: readonly InputSection[];
    readonly rows: ReadonlyMap<string, number>;
  };
  /** Null where there is no investment plan. */
  readonly years: {
    readonly name: string;
    readonly rows: readonly YearRow[];
    readonly steps: readonly YearStepRow[];
  } | null;
  /** Names for cells beside the model, none of them taken. */
  readonly moreNames: DefinedNames;
}

/** Gives every node that needs one a cell. Sheets that hold the model are named by `sheetNames`. */
export function modelLayout({ content, model }: OpenCase, sheetNames: SheetNames): ModelLayout {
  const { graph } = model;
  const found = calculationOf(content, graph);
  const places = new Map<number, CellPlace>();
  const names = new Map<number, string>();
  const defined = new DefinedNames();
  // Taken before any id can take it.
  if (defined.nameFor(roundingName) !== roundingName) throw new Error('The name of what is rounded off is taken');
  for (const { index, declaration } of graph.nodes)
    if (declaration !== null) names.set(index, defined.nameFor(declaration.id));
  const inputs = placeInputs(graph, inputSections(content, graph.inputs), sheetNames.nameFor('Inputs'), places);
  const years =
    content.investment === undefined ? null : placeYears(graph, content.investment.years, sheetNames, places);
  const calculation = found.sheets.map((sheet) => placeSheet(sheet, sheetNames.nameFor(sheet.tab), places));
  const fixed = placeFixed(graph, found.fixed, sheetNames.nameFor('Fixed numbers'), places);
  const fixedNames = new Map(
    fixed.nodes.map((index) => [fixedKey(graph, index), defined.nameFor(fixedId(graph, index))]),
  );
  for (const index of found.fixed) names.set(index, fixedNames.get(fixedKey(graph, index)) ?? '');
  const steps = years === null ? [] : placeYearSteps(found.yearSteps, found.roles, years, places);
  return {
    places,
    names,
    owners: found.owners,
    calculation,
    fixed,
    inputs,
    years: years === null ? null : { ...years, steps },
    moreNames: defined,
  };
}

function placeInputs(
  graph: Graph,
  sections: readonly InputSection[],
  name: string,
  places: Map<number, CellPlace>,
): ModelLayout['inputs'] {
  const rows = new Map<string, number>();
  let row = firstRow;
  for (const { inputs } of sections) {
    row += 1;
    for (const { id } of inputs) {
      rows.set(id, row);
      places.set(graph.positions.get(id) ?? -1, { sheet: name, row, column: inputColumns.inModel });
      row += 1;
    }
    row += 1;
  }
  return { name, sections, rows };
}

function placeSheet(
  { title, blocks }: Calculation['sheets'][number],
  name: string,
  places: Map<number, CellPlace>,
): ModelLayout['calculation'][number] {
  const rows = blocks.flatMap((block): readonly LaidRow[] => [
    { kind: 'block', title: block.title },
    ...block.nodes.map((index): LaidRow => ({ kind: 'node', index })),
    { kind: 'space' },
  ]);
  rows.forEach((each, at) => {
    if (each.kind === 'node') places.set(each.index, { sheet: name, row: firstRow + at, column: valueColumn });
  });
  return { name, title, rows };
}

/** The first row holds what binary numbers round off. */
const firstFixedRow = firstRow + 1;

/** One cell for equal numbers of one unit. */
function placeFixed(
  graph: Graph,
  fixed: readonly number[],
  name: string,
  places: Map<number, CellPlace>,
): ModelLayout['fixed'] {
  const nodes: number[] = [];
  const rows = new Map<string, number>();
  for (const index of fixed) {
    const key = fixedKey(graph, index);
    if (!rows.has(key)) {
      rows.set(key, firstFixedRow + nodes.length);
      nodes.push(index);
    }
    places.set(index, { sheet: name, row: rows.get(key) ?? firstFixedRow, column: valueColumn });
  }
  return { name, nodes };
}

function fixedKey(graph: Graph, index: number): string {
  const { operation, unit } = nodeAt(graph, index);
  return operation.op === 'constant' ? `${operation.digits} ${unit.text}` : '';
}

/** Enough of the number and its unit to know it by. */
function fixedId(graph: Graph, index: number): string {
  const [digits = '', unit = ''] = fixedKey(graph, index).split(' ');
  return `fixed.${digits.slice(0, 12)}.${unit.replaceAll('/', ' per ')}`;
}

function placeYears(
  graph: Graph,
  years: number,
  sheetNames: SheetNames,
  places: Map<number, CellPlace>,
): { readonly name: string; readonly rows: readonly YearRow[] } {
  const name = sheetNames.nameFor('Investment');
  const rows = yearRows(graph, years);
  rows.forEach(({ nodes }, at) => {
    nodes.forEach((index, year) => {
      if (index !== undefined) places.set(index, { sheet: name, row: firstRow + at, column: firstYearColumn + year });
    });
  });
  return { name, rows };
}

/** The row of an input on the sheet of inputs. */
export function inputRow(layout: ModelLayout, { id }: Pick<InputDeclaration, 'id'>): number {
  const row = layout.inputs.rows.get(id);
  if (row === undefined) throw new Error(`The input "${id}" has no row`);
  return row;
}
