import { capitalStand } from '../../study/before-new-plant.ts';
import { sameProduct } from '../../study/trust/same-product.ts';
import { cautionsOf } from '../../study/warnings.ts';
import { conditionPhrase } from '../../wording/condition-phrase.ts';
import { cautionSentence } from '../../wording/caution-sentence.ts';
import { formula, note, strong, text, told } from '../cells.ts';
import type { Verdict } from '../checks/verdict.ts';
import { firstRow } from '../model/geometry.ts';
import type { ModelCells } from '../model/model-cells.ts';
import type { Cell, Picture, SheetPlan } from '../plan.ts';
import { programVersion } from '../program-version.ts';
import type { WorkbookFacts } from '../workbook-facts.ts';
import { framed } from './framed.ts';
import { linkCell } from './link-cell.ts';

const units: readonly (readonly [string, string])[] = [
  ['t', 'tonne of saleable product, at its moisture'],
  ['bdt', 'bone-dry tonne'],
  ['adt', 'air-dry tonne: 90 % dry'],
  ['t as received', 'tonne as it comes over the weighbridge'],
  ['wet t', 'tonne of residue as it is hauled'],
  ['gross t', 'tonne at the reel, before trim and broke'],
];

/** What the workbook is, how to read it, and what to look at. */
export function aboutSheet(
  cells: ModelCells,
  name: string,
  verdict: Verdict,
  facts: WorkbookFacts,
  sheets: readonly (readonly [string, string])[],
): SheetPlan {
  const { content, model } = cells.open;
  const label = (id: string): string => content.routes.find((route) => route.id === id)?.label ?? id;
  const { baseId, withId, totalId, totalPerYearId } = model.difference;
  const holds = conditionPhrase({ capital: capitalStand(cells.open), sameProduct: sameProduct(cells.open) });
  const cautions = cautionsOf(cells.open, facts.today).map(cautionSentence);
  const rows: readonly (readonly Cell[])[] = [
    ...(holds === '' ? [] : [[strong('Holds'), strong(`${holds}.`)]]),
    [text('Product'), text(content.product.name)],
    [text('Tonnes a year'), linkCell(cells, 'product.tonnes', name)],
    [text('Routes compared'), text(`${label(withId)} less ${label(baseId)}`)],
    [strong(`Difference, ${content.currency}/t`), linkCell(cells, totalId, name, 'strong')],
    [strong(`Difference, ${content.currency}/year`), linkCell(cells, totalPerYearId, name, 'strong')],
    [text('Currency'), text(content.currency)],
    [text('Prices of'), text(content.priceYear)],
    [
      text('Basis'),
      text(
        'One tonne of saleable product, and a year of it. Energy, water, residues and carbon stand per tonne of product.',
      ),
    ],
    [
      text('Signs'),
      text(
        'Costs are positive, credits negative; differences are the second route less the first. In the investment plan money that comes in is positive.',
      ),
    ],
    [text('Made by'), text(`Tonne for Tonne ${programVersion}${facts.today === null ? '' : `, ${facts.today}`}`)],
    ...(content.note === '' ? [] : [[text('Note'), text(content.note)]]),
    [],
    [strong('How it works')],
    [
      note(
        'Change a coloured figure on the sheet Inputs: the statement, the bridge, the footprint, the plan and the checks follow. All other cells are locked, without a password.',
      ),
    ],
    [
      note(
        'Sensitivity, scenarios and trials are results of the program: they say so, and they say when they no longer fit the inputs.',
      ),
    ],
    [note('#N/A is a figure that cannot be worked out; the note beside it, or the sheet Inputs, says why.')],
    [note('There are no macros, no hidden sheets and no links to other files.')],
    [],
    [strong('Colours')],
    [{ kind: 'entry', value: 1, form: 'as typed' }, text('A figure to type over')],
    [formula('1', 1, 'as typed'), text('A formula')],
    [told(1, 'as typed'), text('A result of the program, which follows nothing')],
    [
      formula(verdict.wordsName, verdict.words, 'as typed', 'verdict'),
      text('What the checks come to; red as soon as one is broken'),
    ],
    [],
    [strong('Units')],
    ...units.map(([unit, words]) => [text(unit), text(words)]),
    [],
    [strong('Sheets')],
    ...sheets.map(([sheet, words]) => [text(sheet), text(words)]),
    [],
    [strong('To look at')],
    ...(cautions.length === 0 ? [[note('Nothing.')]] : cautions.map((sentence) => [text(sentence)])),
    [],
  ];
  return {
    ...framed({
      name,
      title: content.title,
      says: 'What a tonne costs by two routes, with every step from the inputs to the result.',
      verdict,
      heads: [],
      widths: [34, 22, 100],
      rows: [
        ...rows,
        ...(facts.pictures.length === 0 ? [] : [[strong('Pictures, as they were at the moment of writing')]]),
      ],
    }),
    pictures: placed(facts.pictures, firstRow + rows.length + 1),
  };
}

/** A row is about 20 pixels high in every spreadsheet's default. */
const rowHeight = 20;

function placed(pictures: WorkbookFacts['pictures'], first: number): readonly Picture[] {
  let row = first + 1;
  return pictures.map(({ png, width, height }) => {
    const picture = { png, width, height, row, column: 1 };
    row += Math.ceil(height / rowHeight) + 2;
    return picture;
  });
}
