import type { Material, Route } from '../case/case.ts';
import { type Quantity, constant, total } from '../kernel/expression/quantity.ts';
import type { Plant } from './plant.ts';
import { type InputSpec, type Sheet, fraction, notNegative } from './sheet.ts';
import type { LineSpec } from './statement-writer.ts';
import { usedMaterials } from './used-materials.ts';

const priceSpec: InputSpec = {
  id: 'price.certificate',
  label: 'Recycling certificate',
  unit: 'EUR/t-ar',
  allowed: notNegative,
};

/**
 * Certificates that a mill may sell for used paper it recycles, packaging recovery notes for one: tonnes delivered x eligible share x price.
 * How much of a grade is eligible is a rule of the scheme and has no default. No line where nobody gave the price.
 */
export function certificateLine(sheet: Sheet, { route }: Plant): readonly LineSpec[] {
  if (!sheet.has(priceSpec)) return [];
  const price = sheet.input(priceSpec);
  // Broke and pulp earn nothing.
  const recovered = usedMaterials(sheet, route).filter(({ origin }) => origin.endsWith('-consumer'));
  const certified = recovered.map((material) => certifiedMass(sheet, route, material));
  const mass = sheet.define(
    `${route.id}.recycled.certificates`,
    'Recovered paper that earns a certificate',
    't-ar/t',
    total(certified, 't-ar/t'),
    { where: route.label, note: 'Tonnes as received times the eligible share, over all recovered grades.' },
  );
  const worth = mass.times(price);
  return [
    {
      account: 'credits',
      key: 'certificates',
      label: 'Recycling certificates',
      amount: constant('0', worth.unit).minus(worth),
      driverId: `${route.id}.recycled.certificates`,
      nature: 'policy',
      note: 'Eligible tonnes times the price of a certificate, as a credit.',
    },
  ];
}

function certifiedMass(sheet: Sheet, route: Route, { id, label }: Material): Quantity {
  const share = sheet.input({
    id: `material.${id}.certificateShare`,
    label: 'Share that earns a recycling certificate',
    where: label,
    unit: '1',
    entry: '%',
    allowed: fraction,
  });
  return sheet.graph.later(`${route.id}.received.${id}`, 't-ar/t').times(share);
}
