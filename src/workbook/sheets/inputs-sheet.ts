import { type InputDeclaration, inForce } from '../../kernel/graph/input-declaration.ts';
import { nodeNamed } from '../../kernel/graph/graph.ts';
import { boundsPhrase } from '../../wording/bounds-phrase.ts';
import { unitLabel } from '../../wording/unit-label.ts';
import { cellAddress } from '../addresses.ts';
import { empty, formula, heads, number, strong, text } from '../cells.ts';
import type { Verdict } from '../checks/verdict.ts';
import { inputColumns as at } from '../model/geometry.ts';
import type { ModelCells } from '../model/model-cells.ts';
import { inputRow } from '../model/model-layout.ts';
import type { Cell, SheetPlan } from '../plan.ts';
import { framed } from './framed.ts';

const columns = [
  ['Input', 40],
  ['Of', 38],
  ['Figure', 14],
  ['Unit', 18],
  ['Default or given', 14],
  ['Rests on', 12],
  ['Usual, low', 11],
  ['Usual, high', 11],
  ['Least', 9],
  ['Most', 9],
  ['Factor', 9],
  ['In the model', 14],
  ['Unit in the model', 16],
  ['Figure as written', 14],
  ['Changed', 9],
  ['Source', 80],
  ['Id', 40],
] as const;

/** Every input with its figure, the only cells that are not locked; beside each the figure as the model reckons with it. */
export function inputsSheet(cells: ModelCells, verdict: Verdict): SheetPlan {
  const { inputs } = cells.layout;
  const rows = inputs.sections.flatMap(({ title, inputs: held }): readonly (readonly Cell[])[] => [
    [strong(title)],
    ...held.map((input) => inputCells(cells, input)),
    [],
  ]);
  return framed({
    name: inputs.name,
    title: 'Inputs',
    says: 'Type over the coloured figures; everything else follows. A figure outside what is possible, or none, shows as #N/A in all that is made of it.',
    verdict,
    heads: heads(...columns.map(([head]) => head)),
    widths: columns.map(([, width]) => width),
    rows,
    frozenColumns: at.value,
  });
}

function inputCells(cells: ModelCells, input: InputDeclaration): readonly Cell[] {
  const row = inputRow(cells.layout, input);
  const { graph } = cells.open.model;
  const digits = inForce(input);
  const figure = digits === null ? null : Number(digits);
  const provenance = input.given?.provenance ?? input.usual.provenance;
  const { index, unit } = nodeNamed(graph, input.id);
  const { least, most, above, below } = input.allowed;
  const [typed, written] = [cellAddress(row, at.value), cellAddress(row, at.exported)];
  const unitWords = unitLabel(input.entryUnit);
  return [
    text(input.label),
    text(input.where ?? ''),
    {
      kind: 'entry',
      value: figure,
      form: 'as typed',
      accepts: { bounds: input.allowed, sentence: acceptsSentence(input) },
    },
    text(unitWords),
    text(input.given === null ? 'default' : 'given'),
    text(provenance.status === 'none' ? 'no source' : provenance.status),
    digitsCell(input.usual.low),
    digitsCell(input.usual.high),
    digitsCell(least ?? above),
    digitsCell(most ?? below),
    number(Number(input.factor), 'as typed'),
    formula(inModel(row, input), cells.result(index), 'as typed'),
    text(unitLabel(unit.text)),
    figure === null ? empty : number(figure, 'as typed'),
    formula(`IF(AND(ISNUMBER(${typed})=ISNUMBER(${written}),${typed}=${written}),0,1)`, 0, 'whole'),
    text([provenance.source, provenance.note].filter((part) => part !== undefined && part !== '').join('. ')),
    text(input.id),
  ];
}

function acceptsSentence({ label, allowed, entryUnit }: InputDeclaration): string {
  return `${label}: possible is ${boundsPhrase(allowed, unitLabel(entryUnit))}.`;
}

function digitsCell(digits: string | null | undefined): Cell {
  return digits === null || digits === undefined ? empty : number(Number(digits), 'as typed');
}

/** The figure times the factor of its unit, where it is a number within what is possible; an empty cell would count as nothing. */
function inModel(row: number, { allowed: { least, most, above, below } }: InputDeclaration): string {
  const [typed, lower, upper, factor] = [at.value, at.least, at.most, at.factor].map((column) =>
    cellAddress(row, column),
  );
  const figure = typed ?? '';
  const tests = [
    ...(least === undefined && above === undefined
      ? []
      : [`${figure}${least === undefined ? '>' : '>='}${lower ?? ''}`]),
    ...(most === undefined && below === undefined ? [] : [`${figure}${most === undefined ? '<' : '<='}${upper ?? ''}`]),
  ];
  const worth = `${figure}*${factor ?? ''}`;
  const checked =
    tests.length === 0
      ? worth
      : `IF(${tests.length === 1 ? (tests[0] ?? '') : `AND(${tests.join(',')})`},${worth},NA())`;
  return `IF(ISNUMBER(${figure}),${checked},NA())`;
}
