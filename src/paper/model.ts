import type { Case, Route } from '../case/case.ts';
import type { Problem } from '../case/problem.ts';
import { type Quantity, total } from '../kernel/expression/quantity.ts';
import type { Graph } from '../kernel/graph/graph.ts';
import { ratesOf } from './capital.ts';
import { compositionOf } from './materials/composition.ts';
import { purchaseOf } from './materials/purchase.ts';
import { factor, machineEntries } from './catalogue.ts';
import { noFlow } from './components.ts';
import { type Difference, writeDifference } from './difference.ts';
import { writeCarbonDifference } from './footprint/carbon-difference.ts';
import { heatSupplies } from './heat-supply.ts';
import { writeInvestment } from './investment/investment.ts';
import { planSheet } from './investment/plan-sheet.ts';
import { type LineResult, lineOf } from './line.ts';
import { machineOf } from './machine.ts';
import { writeEffectDifference } from './machine-effect/effect-difference.ts';
import { writeMarginalPower } from './marginal-power.ts';
import { nearest } from './nearest.ts';
import type { Mill, Plant } from './plant.ts';
import { type RouteModel, routeModel } from './route.ts';
import { serviceFromStrength, strengthOf } from './strength.ts';
import { type FurtherFigure, Sheet, fraction, notNegative, positive } from './sheet.ts';

/** A case turned into a calculation: the graph, and which of its quantities are what. */
export interface Model {
  readonly case: Case;
  readonly graph: Graph;
  readonly routes: readonly RouteModel[];
  readonly difference: Difference;
  /** Ids that would be inputs, and are worked out in this case: they take no figure. */
  readonly workedOut: ReadonlySet<string>;
  /**
   * What is wrong with the figures given, and which are missing. A refused figure leaves the default in force, so such a model must not be
   * worked out; a missing one only fails what depends on it.
   */
  readonly problems: readonly Problem[];
  /** Figures that could be given beside those it has. */
  readonly further: readonly FurtherFigure[];
}

/** Writes the whole model of a case down once. Names that the program's lists do not hold must have been refused before. */
export function buildModel(content: Case): Model {
  const sheet = new Sheet(content);
  const mill = millOf(sheet);
  const supplies = heatSupplies(sheet);
  const prices = {
    electricity: sheet.input({
      id: 'price.electricity',
      label: 'Electricity',
      unit: 'EUR/kWh',
      figure: factor('electricity'),
      allowed: notNegative,
    }),
  };
  const routes = content.routes.flatMap((route) => {
    const supply = supplies.get(route.heat);
    return supply === undefined ? [] : [routeModel(sheet, plantOf(sheet, route, mill), supply, prices)];
  });
  const difference = writeDifference(sheet, routes);
  writeMarginalPower(sheet, prices);
  writeCarbonDifference(sheet);
  writeEffectDifference(sheet);
  writePlan(sheet, mill, routes);
  const graph = sheet.graph.build();
  const known = graph.inputs.map((input) => input.id);
  const unknown = sheet.unasked().map((id): Problem => ({ kind: 'unknown input', id, near: nearest(id, known) }));
  const { workedOut } = sheet;
  return {
    case: content,
    graph,
    routes,
    difference,
    workedOut,
    problems: [...sheet.problems, ...unknown],
    further: sheet.further(),
  };
}

/** The plan to change from one route to another, where the case has one. */
function writePlan(sheet: Sheet, mill: Mill, routes: readonly RouteModel[]): void {
  const { investment } = sheet.case;
  if (investment === undefined) return;
  const base = routes.find(({ plant }) => plant.route.id === investment.from);
  const project = routes.find(({ plant }) => plant.route.id === investment.to);
  if (base === undefined || project === undefined) return;
  writeInvestment(planSheet(sheet, investment, mill, base, project, ratesOf(sheet)));
}

function millOf(sheet: Sheet): Mill {
  const { materials, product } = sheet.case;
  const productMoisture = sheet.input({
    id: 'product.moisture',
    label: 'Product moisture',
    unit: '1',
    figure: machineEntries.get(product.machine)?.['moisture'],
    allowed: { least: '0', below: '100' },
  });
  const tonnes = sheet.input({ id: 'product.tonnes', label: 'Saleable tonnes a year', unit: 't/a', allowed: positive });
  const hours = sheet.input({
    id: 'product.hours',
    label: 'Running hours a year',
    unit: 'h/a',
    figure: { value: '8150', low: '7500', high: '8500', unit: 'h/a', source: 'practice', status: 'practice' },
    allowed: { above: '0', most: '8784' },
  });
  sheet.define('product.perHour', 'Saleable tonnes an hour', 't/h', tonnes.dividedBy(hours));
  const compositions = new Map(materials.map((material) => [material.id, compositionOf(sheet, material)]));
  return {
    productMoisture,
    dryProduct: sheet.define(
      'product.dry',
      'Dry mass of a saleable tonne',
      'bdt/t',
      productMoisture.complement().times(sheet.constant('1', 'bdt/t')),
    ),
    tonnes,
    hours,
    compositions,
    purchases: new Map(
      materials.map((material) => [
        material.id,
        purchaseOf(sheet, material, compositions.get(material.id) ?? noFlow('1')),
      ]),
    ),
  };
}

function plantOf(sheet: Sheet, route: Route, mill: Mill): Plant {
  serviceFromStrength(sheet, route);
  const machine = machineOf(sheet, route, mill.dryProduct);
  const lines = route.lines.map((line): LineResult => {
    const share = shareOf(sheet, route, line.id);
    const stock = sheet.define(
      `${route.id}.${line.id}.stock`,
      'Stock to the blend chest',
      'bdt/t',
      machine.stock.times(share),
      { where: `${route.label}, ${line.label}`, note: 'Fresh fibre stock needed times the share of the line.' },
    );
    return lineOf(sheet, route, line, stock, mill.compositions);
  });
  strengthOf(sheet, route, lines);
  return { route, mill, machine, lines };
}

/** A line's share of the dry fresh stock. The balancing line takes what the others leave, so that shares are always 100 %. */
function shareOf(sheet: Sheet, route: Route, lineId: string): Quantity {
  const label = (id: string) => `${route.label}, ${route.lines.find((line) => line.id === id)?.label ?? id}`;
  const given = (id: string): Quantity =>
    sheet.input({
      id: `${route.id}.${id}.share`,
      label: 'Share of the dry fresh stock',
      where: label(id),
      unit: '1',
      entry: '%',
      allowed: fraction,
    });
  if (lineId !== route.balance) return given(lineId);
  const others = route.lines.filter((line) => line.id !== route.balance).map((line) => given(line.id));
  const rest = total(others, '1').complement();
  const share = others.length === 0 ? rest : rest.within({ least: '0' });
  return sheet.define(`${route.id}.${lineId}.share`, 'Share of the dry fresh stock', '1', share, {
    where: label(lineId),
    note: 'What the other lines leave.',
    shownIn: '%',
  });
}
