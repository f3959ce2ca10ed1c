import type { Spread } from '../../../../../src/index.ts';

/** A result that a limit can watch, and the unit it is usually limited in. */
export interface LimitChoice {
  readonly result: string;
  readonly label: string;
  readonly unit: string;
}

/** What is limited often: permits, outlets, capacities, what a customer accepts. Any other result can be named by its id. */
export function limitChoices({ currency, inputs, base, with: other }: Spread): readonly LimitChoice[] {
  // Of fresh water and effluent one is given and the other closes the balance; each route has its own way.
  const routes = [base.id, other.id];
  const isFreshGiven = routes.some((id) => Object.hasOwn(inputs, `${id}.machine.freshWater`));
  const isEffluentGiven = routes.some((id) => Object.hasOwn(inputs, `${id}.effluent`));
  const hasBrightness = Object.keys(inputs).some(
    (id) => routes.some((route) => id.startsWith(`${route}.`)) && id.endsWith('.brightness'),
  );
  const both = isFreshGiven && isEffluentGiven;
  const water = [
    ...(isFreshGiven ? waterChoices('machine.freshWater', 'water.effluent', both ? ', fresh water given' : '') : []),
    ...(isEffluentGiven ? waterChoices('water.fresh', 'effluent', both ? ', effluent given' : '') : []),
  ];
  return [
    { result: 'productAsh', label: 'Ash of the product', unit: '%' },
    { result: 'product.dirt', label: 'Ink specks in the product', unit: 'kg/t' },
    { result: 'product.macroStickies', label: 'Macro-stickies in the product', unit: 'kg/t' },
    ...(hasBrightness ? [{ result: 'product.brightness', label: 'Brightness of the stock', unit: '%' }] : []),
    { result: 'water.concentration', label: 'Dissolved matter in the water loop', unit: 'mg/l' },
    { result: 'residue.all.wet.landfill', label: 'Residues to landfill, as hauled', unit: 'wet-t/a' },
    { result: 'residue.all.wet', label: 'All residues, as hauled', unit: 'wet-t/a' },
    { result: 'effluent.rawDemand', label: 'Oxygen demand of the raw effluent', unit: 'kgCOD/d' },
    ...water,
    { result: 'electricity.total', label: 'Electricity', unit: 'kWh/t' },
    { result: 'heat.total', label: 'Heat', unit: 'GJ/t' },
    { result: 'footprint.total', label: 'Carbon, all scopes', unit: 'kgCO2e/t' },
    { result: 'recycled.content', label: 'Recycled content', unit: '%' },
    { result: 'cost.total', label: 'Whole cost', unit: `${currency}/t` },
  ];
}

function waterChoices(fresh: string, effluent: string, which: string): readonly LimitChoice[] {
  return [
    { result: effluent, label: `Effluent${which}`, unit: 'm3/d' },
    { result: fresh, label: `Fresh water${which}`, unit: 'm3/d' },
  ];
}
