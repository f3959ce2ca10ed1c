import type { Material, Settlement } from '../../case/case.ts';
import { type Quantity, constant } from '../../kernel/expression/quantity.ts';
import { type Flow, massOf } from '../components.ts';
import { plainFigure } from '../figure.ts';
import { unwanted } from './composition.ts';
import { type Sheet, fraction } from '../sheet.ts';

/** The moisture agreed with a supplier, and how far above it nothing is deducted. */
export interface MoistureLimit {
  readonly limit: Quantity;
  readonly tolerance: Quantity;
}

export function moistureLimitOf(sheet: Sheet, material: Material): MoistureLimit | null {
  if (material.settlement === 'as weighed' || material.price.basis !== 'as received') return null;
  const of = (what: string, label: string, value: string, high: string) =>
    sheet.input({
      id: `material.${material.id}.${what}`,
      label,
      where: material.label,
      unit: '1',
      figure: plainFigure(value, '0', high, '%'),
      allowed: fraction,
    });
  return {
    limit: of('moistureLimit', 'Moisture agreed', '10', '14'),
    tolerance: of('moistureTolerance', 'Tolerance above it', '0', '2'),
  };
}

/**
 * Share of the weighed mass that is paid for, when it is wetter than agreed (limit L, moisture m). Within the tolerance all is paid.
 * Dry basis: (1 - m)/(1 - L). Point for point: 1 - (m - L).
 */
export function payableShare(
  settlement: Settlement,
  moisture: Quantity,
  { limit, tolerance }: MoistureLimit,
): Quantity {
  const all = constant('1');
  const reduced =
    settlement === 'dry basis'
      ? moisture.complement().dividedBy(limit.complement())
      : moisture.minus(limit).complement();
  return moisture.whenAbove(limit.plus(tolerance), reduced, all);
}

/**
 * Share that is paid for, where a limit for unusable material was agreed: 1 - (u - u_limit) above it, u being total unwanted material on dry
 * mass (film, heavies, wire and wet-strength paper). All is paid where nothing was agreed.
 */
export function usableShare(sheet: Sheet, material: Material, composition: Flow): Quantity {
  const agreed = {
    id: `material.${material.id}.unusableLimit`,
    label: 'Unusable material agreed',
    where: material.label,
    unit: '1',
    entry: '%',
    allowed: fraction,
  } as const;
  if (!sheet.has(agreed)) return constant('1');
  const unusable = sheet.define(
    `material.${material.id}.unusable`,
    'Unusable material',
    '1',
    massOf(composition, unwanted),
    {
      where: material.label,
      note: 'Film and foam, sand, glass and metal, wire, and wet-strength paper, on dry mass.',
      shownIn: '%',
    },
  );
  const limit = sheet.input(agreed);
  return unusable.minus(limit).greaterOf(constant('0')).complement();
}
