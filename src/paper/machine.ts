import type { Route } from '../case/case.ts';
import { type Quantity, constant, total } from '../kernel/expression/quantity.ts';
import { machineEntries } from './catalogue.ts';
import { type Figure, plainFigure } from './figure.ts';
import { type Sheet, fraction, notNegative } from './sheet.ts';

/** The paper machine's balance per tonne of saleable product, dry unless said otherwise. */
export interface Machine {
  /** Tonnes made for one tonne of the reference product's service. */
  readonly service: Quantity;
  /** Gross dry production, bdt/t. */
  readonly gross: Quantity;
  /** Gross tonnes at product moisture, gt/t. */
  readonly grossTonnes: Quantity;
  /** Fresh fibre stock from the lines, bdt/t. */
  readonly stock: Quantity;
  readonly wetEndAdditives: Quantity;
  readonly surfaceAdditives: Quantity;
  readonly broke: Quantity;
  readonly brokeRejects: Quantity;
  /** Dry solids lost from the wet end to the effluent, bdt/t. */
  readonly wetEndLoss: Quantity;
  /** Water evaporated in the dryers, m3/t. */
  readonly dryerWater: Quantity;
  /** Water that comes in with the surface size, m3/t. */
  readonly sizeWater: Quantity;
  readonly input: (name: string, label: string, unit: string, more?: { allowed?: object; figure?: Figure }) => Quantity;
}

const belowAll = { least: '0', below: '100' } as const;
const betweenNoneAndAll = { above: '0', below: '100' } as const;

/**
 * With N the dry mass of a saleable tonne, b the broke share of gross dry production, y its yield, s the wet-end loss, phi and sigma
 * the additive shares: G = N/(1-b), M = G (1-sigma)/(1-s), P = (1-phi)(M - b G y), A = phi (M - b G y), S = sigma G; then
 * P + A + S + b G y = G + s M. Broke goes round: it is no loss of the lines and buys no fibre.
 */
export function machineOf(sheet: Sheet, route: Route, dryProduct: Quantity): Machine {
  const id = `${route.id}.machine`;
  const where = `${route.label}, machine`;
  const defaults = machineEntries.get(route.machine ?? sheet.case.product.machine) ?? {};
  const input: Machine['input'] = (name, label, unit, { allowed = notNegative, figure = defaults[name] } = {}) =>
    sheet.input({ id: `${id}.${name}`, label, where, unit, ...(figure === undefined ? {} : { figure }), allowed });
  const define = (name: string, label: string, unit: string, quantity: Quantity, note: string) =>
    sheet.define(`${id}.${name}`, label, unit, quantity, { where, note });

  const service = input('serviceFactor', 'Tonnes for the same service', '1', {
    figure: plainFigure('1', '1', '1', '1', 'definition', '1 where both routes serve alike'),
    allowed: { above: '0' },
  });
  const brokeShare = input('broke', 'Broke, share of gross dry production', '1', { allowed: belowAll });
  const brokeYield = input('brokeYield', 'Broke line yield', '1', { allowed: fraction });
  const lossShare = input('wetEndLoss', 'Wet-end loss, share of the furnish', '1', { allowed: belowAll });
  const additiveShare = input('additiveShare', 'Wet-end additives, share of the fresh dry furnish', '1', {
    allowed: belowAll,
  });
  const surfaceShare = input('surfaceShare', 'Surface starch and coating, share of gross dry production', '1', {
    allowed: belowAll,
  });
  const sizeConsistency = input('sizeConsistency', 'Surface size, dry content', '1', {
    allowed: { above: '0', most: '100' },
  });
  const pressDryness = input('pressDryness', 'Dryness after the press', '1', { allowed: betweenNoneAndAll });

  const gross = define(
    'gross',
    'Gross dry production',
    'bdt/t',
    dryProduct.times(service).dividedBy(brokeShare.complement()),
    'Dry mass of the product over what is not broke.',
  );
  const broke = define(
    'brokeMass',
    'Broke, dry',
    'bdt/t',
    gross.times(brokeShare),
    'Gross production times the broke share.',
  );
  const brokeBack = broke.times(brokeYield);
  const furnish = define(
    'furnish',
    'Dry furnish to the machine',
    'bdt/t',
    gross.times(surfaceShare.complement()).dividedBy(lossShare.complement()),
    'Gross production less what is added at the surface, over what the wet end keeps.',
  );
  const fresh = define(
    'fresh',
    'Fresh dry furnish',
    'bdt/t',
    furnish.minus(brokeBack).within({ above: '0' }),
    'The furnish less the broke that comes back.',
  );
  const stock = define(
    'stock',
    'Fresh fibre stock needed',
    'bdt/t',
    fresh.times(additiveShare.complement()),
    'Fresh furnish less wet-end additives.',
  );
  const reelDryness = { id: `${id}.reelDryness`, label: 'Dryness at the reel', where, unit: '1', entry: '%' } as const;
  const reel = sheet.isGiven(reelDryness.id)
    ? sheet.input({ ...reelDryness, allowed: betweenNoneAndAll })
    : dryProduct.times(constant('1', 't/bdt'));
  const surfaceAdditives = define(
    'surfaceAdditives',
    'Surface starch and coating',
    'bdt/t',
    gross.times(surfaceShare),
    'Gross production times the surface share.',
  );
  const waterAt = (dryness: Quantity) => dryness.complement().dividedBy(dryness);
  const sizeWater = surfaceAdditives.times(waterAt(sizeConsistency)).times(constant('1', 'm3/bdt'));
  // What is added at the surface is reckoned as if it had passed the press too: at 2 % this overstates the dryers by 0.09 GJ a tonne.
  const pressed = gross.times(waterAt(pressDryness).minus(waterAt(reel))).times(constant('1', 'm3/bdt'));
  return {
    service,
    gross,
    grossTonnes: define(
      'grossTonnes',
      'Gross tonnes at the reel',
      'gt/t',
      gross.dividedBy(dryProduct).times(constant('1', 'gt/t')),
      'Gross dry production at product moisture.',
    ),
    stock,
    wetEndAdditives: define(
      'wetEndAdditives',
      'Wet-end additives',
      'bdt/t',
      fresh.times(additiveShare),
      'Fresh furnish times the additive share.',
    ),
    surfaceAdditives,
    broke,
    brokeRejects: define(
      'brokeRejects',
      'Broke-line rejects, dry',
      'bdt/t',
      broke.minus(brokeBack),
      'Broke that the broke line does not give back.',
    ),
    wetEndLoss: define(
      'wetEndLossMass',
      'Wet-end loss, dry',
      'bdt/t',
      furnish.times(lossShare),
      'The furnish times the loss share; one share for all components.',
    ),
    dryerWater: define(
      'dryerWater',
      'Water evaporated in the dryers',
      'm3/t',
      total([pressed, sizeWater], 'm3/t').within({ least: '0' }),
      'From press dryness to reel dryness, and the water of the surface size.',
    ),
    sizeWater,
    input,
  };
}
