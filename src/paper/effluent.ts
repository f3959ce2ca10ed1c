import { type Quantity, constant, total } from '../kernel/expression/quantity.ts';
import type { AdditiveUse } from './additives.ts';
import { factor } from './catalogue.ts';
import { type Flow, components, flowOf, massOf, noFlow } from './components.ts';
import { plainFigure } from './figure.ts';
import type { Plant } from './plant.ts';
import { type Sheet, fraction, notNegative } from './sheet.ts';

/** What goes to the effluent plant and what it makes of it, per tonne of product. */
export interface Effluent {
  /** Chemical oxygen demand of the raw effluent, kgCOD/t. */
  readonly rawDemand: Quantity;
  readonly demandRemoved: Quantity;
  /** Dissolved matter that leaves with the effluent, bdt/t. */
  readonly dissolved: Quantity;
  /** Solids caught as primary sludge, by component, bdt/t. */
  readonly primarySludge: Flow;
  /** Biological sludge, counted as fines, bdt/t. */
  readonly biologicalSludge: Flow;
  /** Broke-line rejects by component, bdt/t. */
  readonly brokeRejects: Flow;
  /** Share of minerals in what is on the machine. */
  readonly ash: Quantity;
}

const kgPerTonne = constant('1000', 'kg/bdt');

/**
 * Dissolved matter and the solids that the primary clarifier does not catch become oxygen demand; what is caught is sludge and never
 * also oxygen demand. Wet-end losses and broke have the composition of what is on the machine.
 */
export function effluentOf(sheet: Sheet, plant: Plant, additives: readonly AdditiveUse[]): Effluent {
  const { route, machine, lines } = plant;
  const where = route.label;
  const mixture = shareOfMachine(plant, additives);
  const ash = sheet.define(`${route.id}.productAsh`, 'Ash of the product', '1', mixture.ash, {
    where,
    note: 'Ash in the stock and mineral additives over stock and additives.',
    shownIn: '%',
  });
  const retained = sheet.input({
    id: `${route.id}.retainedDissolved`,
    label: 'Dissolved matter that stays in the product',
    where,
    unit: '1',
    figure: plainFigure('0', '0', '30', '%', 'practice', 'taken to add no product mass, only to spare oxygen demand'),
    allowed: fraction,
  });
  const captured = sheet.input({
    id: 'effluent.primaryCapture',
    label: 'Solids caught by the primary clarifier',
    unit: '1',
    figure: factor('primary-capture'),
    allowed: fraction,
  });
  const perOrganic = sheet.input({
    id: 'effluent.demandPerOrganic',
    label: 'Oxygen demand of organic matter',
    unit: 'kgCOD/kg',
    figure: factor('cod-per-kg-organic'),
    allowed: notNegative,
  });
  const removal = sheet.input({
    id: 'effluent.demandRemoval',
    label: 'Oxygen demand removed by treatment',
    unit: '1',
    figure: factor('cod-removal'),
    allowed: fraction,
  });
  const sludgeYield = sheet.input({
    id: 'effluent.sludgeYield',
    label: 'Biological sludge per oxygen demand removed',
    unit: 'kg/kgCOD',
    figure: factor('biological-yield'),
    allowed: notNegative,
  });
  const washed = lines.map((line) => line.rejects.get('effluent') ?? noFlow('bdt/t'));
  const solid = components.filter((component) => component !== 'dissolved');
  const dissolved = total(
    [
      ...lines.map((line) => line.accepts.dissolved.times(retained.complement())),
      ...washed.map((flow) => flow.dissolved),
    ],
    'bdt/t',
  );
  const solids = flowOf((component) =>
    component === 'dissolved'
      ? constant('0', 'bdt/t')
      : total([machine.wetEndLoss.times(mixture[component]), ...washed.map((flow) => flow[component])], 'bdt/t'),
  );
  const organicLost = massOf(solids, solid).minus(solids.ash).times(captured.complement());
  const rawDemand = sheet.define(
    `${route.id}.effluent.rawDemand`,
    'Oxygen demand of the raw effluent',
    'kgCOD/t',
    dissolved.plus(organicLost).times(kgPerTonne).times(perOrganic),
    { where, note: 'Dissolved matter and organic solids not caught, times their oxygen demand.' },
  );
  const demandRemoved = rawDemand.times(removal);
  const grown = demandRemoved.times(sludgeYield).times(constant('0.001', 'bdt/kg'));
  return {
    rawDemand,
    demandRemoved,
    dissolved,
    primarySludge: flowOf((component) => solids[component].times(captured)),
    biologicalSludge: flowOf((component) => (component === 'fines' ? grown : constant('0', 'bdt/t'))),
    brokeRejects: flowOf((component) =>
      component === 'dissolved' ? constant('0', 'bdt/t') : machine.brokeRejects.times(mixture[component]),
    ),
    ash,
  };
}

/** Share of each component in stock and additives together, dissolved matter left out. */
function shareOfMachine({ lines }: Plant, additives: readonly AdditiveUse[]): Flow {
  const of = (kind: AdditiveUse['kind']) => additives.filter((each) => each.kind === kind).map((each) => each.amount);
  const masses = flowOf((component) => {
    if (component === 'dissolved') return constant('0', 'bdt/t');
    const added = component === 'ash' ? of('mineral') : component === 'fines' ? of('organic') : [];
    return total([...lines.map((line) => line.accepts[component]), ...added], 'bdt/t');
  });
  const all = massOf(masses);
  return flowOf((component) => masses[component].dividedBy(all));
}
