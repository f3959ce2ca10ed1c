import type { Line, Route } from '../case/case.ts';
import { type Quantity, constant, total } from '../kernel/expression/quantity.ts';
import { stageEntries } from './catalogue.ts';
import {
  type Component,
  type Flow,
  addFlows,
  components,
  fibrous,
  flowOf,
  massOf,
  noFlow,
  scaleFlow,
} from './components.ts';
import type { Sheet } from './sheet.ts';
import { fraction } from './sheet.ts';
import { type StageResult, stageOf } from './stages/stage.ts';

export interface Grade {
  readonly material: string;
  readonly share: Quantity;
}

/** A preparation line per tonne of product: what it needs, what it gives, and what leaves it on the way. */
export interface LineResult {
  readonly id: string;
  readonly label: string;
  readonly stages: readonly StageResult[];
  /** Bone-dry feed, bdt/t. */
  readonly feed: Quantity;
  readonly stock: Quantity;
  /** Share of each grade of the recipe in the dry feed. */
  readonly grades: readonly Grade[];
  /** Share of each grade in the stock, after its own losses. */
  readonly gradeStock: readonly Grade[];
  /** Stock to the blend chest by component, dissolved matter included, bdt/t. */
  readonly accepts: Flow;
  /** What leaves, by stream, bdt/t. */
  readonly rejects: ReadonlyMap<string, Flow>;
}

/**
 * Works a line out from its recipe through its train. The train is linear, so everything is reckoned for one bone-dry tonne of feed
 * and then scaled: feed = stock needed / yield. `stock` is the bone-dry stock the line must bring to the blend chest, bdt/t.
 */
export function lineOf(
  sheet: Sheet,
  route: Route,
  line: Line,
  stock: Quantity,
  compositions: ReadonlyMap<string, Flow>,
): LineResult {
  const id = `${route.id}.${line.id}`;
  const where = `${route.label}, ${line.label}`;
  const grades = recipeOf(sheet, id, where, line);
  const recipe = addFlows(
    grades.map(({ material, share }) => scaleFlow(compositions.get(material) ?? noFlow('1'), share)),
    '1',
  );
  const stages: StageResult[] = [];
  let flow = recipe;
  for (const stage of line.stages) {
    const entry = stageEntries.get(stage.like);
    if (entry === undefined) continue;
    const label = stage.label ?? entry.label;
    const result = stageOf(
      sheet,
      {
        id: `${id}.${stage.id}`,
        where: `${where}, ${label}`,
        stage,
        lineFeedId: `${id}.feed`,
        serviceId: `${route.id}.machine.serviceFactor`,
      },
      entry,
      flow,
    );
    stages.push(result);
    flow = result.accepts;
  }
  const kept = massOf(flow, solids);
  const lineYield = sheet.define(
    `${id}.yield`,
    'Line yield',
    '1',
    kept.dividedBy(massOf(recipe)).within({ above: '0' }),
    {
      where,
      note: 'Stock out, dissolved matter left out, over everything that was fed.',
      shownIn: '%',
    },
  );
  sheet.define(`${id}.fibreYield`, 'Fibre yield', '1', massOf(flow, fibrous).dividedBy(massOf(recipe, fibrous)), {
    where,
    note: 'Fibre, fines and wet-strength paper, out over in.',
    shownIn: '%',
  });
  const feed = sheet.define(`${id}.feed`, 'Dry feed', 'bdt/t', stock.dividedBy(lineYield), {
    where,
    note: 'Stock needed over the line yield.',
  });
  const rejects = rejectsByStream(stages, feed);
  const gone = total(
    [...rejects.values()].map((each) => massOf(each)),
    'bdt/t',
  );
  sheet.define(
    `${id}.closure`,
    'Dry mass unaccounted for',
    'bdt/t',
    feed.minus(massOf(scaleFlow(flow, feed))).minus(gone),
    { where, note: 'Feed less stock, dissolved matter and everything removed: nothing, if mass closes.' },
  );
  const gradeStock = gradesInStock(sheet, { id, where, grades, stages, kept }, compositions);
  return { id, label: line.label, stages, feed, stock, grades, gradeStock, accepts: scaleFlow(flow, feed), rejects };
}

interface Followed {
  readonly id: string;
  readonly where: string;
  readonly grades: readonly Grade[];
  readonly stages: readonly StageResult[];
  /** Stock per unit of feed. */
  readonly kept: Quantity;
}

/** Follows each grade of a recipe through the train on its own: grade j makes up q_j Y_j / Y of the stock. */
function gradesInStock(sheet: Sheet, line: Followed, compositions: ReadonlyMap<string, Flow>): readonly Grade[] {
  if (line.grades.length === 1) return line.grades;
  return line.grades.map(({ material, share }) => {
    const fed = scaleFlow(compositions.get(material) ?? noFlow('1'), share);
    const stock = line.stages.reduce((flow, stage) => stage.pass(flow), fed);
    const part = massOf(stock, solids).dividedBy(line.kept);
    const id = `${line.id}.grade.${material}.stockShare`;
    return {
      material,
      share: sheet.define(id, 'Share of the stock', '1', part, { where: `${line.where}, ${material}`, shownIn: '%' }),
    };
  });
}

const solids: readonly Component[] = components.filter((component) => component !== 'dissolved');

/** Shares of the grades in the dry feed; the first takes what the others leave. */
function recipeOf(sheet: Sheet, id: string, where: string, line: Line): readonly Grade[] {
  const [first, ...others] = line.recipe;
  const rest = others.map(({ material }) => ({
    material,
    share: sheet.input({
      id: `${id}.grade.${material}.share`,
      label: 'Share of the dry feed',
      where: `${where}, ${material}`,
      unit: '1',
      entry: '%',
      allowed: fraction,
    }),
  }));
  if (first === undefined) return [];
  if (rest.length === 0) return [{ material: first.material, share: constant('1') }];
  const balance = total(
    rest.map(({ share }) => share),
    '1',
  )
    .complement()
    .within({ least: '0' });
  const share = sheet.define(`${id}.grade.${first.material}.share`, 'Share of the dry feed', '1', balance, {
    where: `${where}, ${first.material}`,
    note: 'What the other grades leave.',
    shownIn: '%',
  });
  return [{ material: first.material, share }, ...rest];
}

function rejectsByStream(stages: readonly StageResult[], feed: Quantity): ReadonlyMap<string, Flow> {
  const parts = new Map<string, Flow[]>();
  for (const stage of stages) {
    const streams = new Set(components.map((component) => stage.streamOf(component)));
    for (const stream of streams) {
      const only = (component: Component): Quantity =>
        stage.streamOf(component) === stream ? stage.rejects[component].times(feed) : constant('0', 'bdt/t');
      parts.set(stream, [...(parts.get(stream) ?? []), flowOf(only)]);
    }
  }
  return new Map([...parts].map(([stream, flows]) => [stream, addFlows(flows, 'bdt/t')]));
}
