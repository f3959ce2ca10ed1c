import type { Material, Settlement } from '../../case/case.ts';
import { type Quantity, constant } from '../../kernel/expression/quantity.ts';
import { plainFigure } from '../figure.ts';
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
