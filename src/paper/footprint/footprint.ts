import { type Quantity, total } from '../../kernel/expression/quantity.ts';
import type { AdditiveUse } from '../additives.ts';
import type { ChemicalUse } from '../chemicals.ts';
import type { Plant } from '../plant.ts';
import type { Residues } from '../residues.ts';
import type { Sheet } from '../sheet.ts';
import { avoidedLandfill } from './avoided-landfill.ts';
import type { Cause, Scope } from './cause.ts';
import { contractPower, contractScopeIdOf } from './contract-power.ts';
import { energyCauses } from './energy-causes.ts';
import { materialCauses } from './material-causes.ts';
import { recycledContent } from './recycled-content.ts';
import { wasteCauses } from './waste-causes.ts';
import { woodUse } from './wood.ts';

/** A cause as it is reported: where its figure stands, and which inputs are its factors. */
export interface ReportedCause extends Omit<Cause, 'amount' | 'note'> {
  readonly quantityId: string;
}

export const scopes: readonly Scope[] = ['scope 1', 'scope 2', 'scope 3'];

export const scopeIdOf = (routeId: string, scope: Scope): string => `${routeId}.footprint.${scope.replace(' ', '')}`;

/** Greenhouse gases of a tonne from cradle to mill gate, by cause and by scope, with recycled content and wood beside. */
export function footprintOf(
  sheet: Sheet,
  plant: Plant,
  parts: {
    /** Useful heat that the boiler raises from fuel, or that is bought, GJ/t. */
    readonly heatMade: Quantity;
    readonly residues: Residues;
    readonly chemicals: readonly ChemicalUse[];
    readonly additives: readonly AdditiveUse[];
  },
): readonly ReportedCause[] {
  const { route } = plant;
  const causes = [
    ...energyCauses(sheet, plant, parts.heatMade),
    ...materialCauses(sheet, plant, parts.chemicals, parts.additives),
    ...wasteCauses(sheet, plant, parts.residues),
  ];
  const amounts = new Map<string, Quantity>();
  const reported = causes.map(({ amount, note, ...cause }): ReportedCause => {
    const quantityId = `${route.id}.footprint.${cause.id}`;
    amounts.set(cause.id, sheet.define(quantityId, cause.label, 'kgCO2e/t', amount, { where: route.label, note }));
    return { ...cause, quantityId };
  });
  const sumOf = (wanted: readonly Cause[]): Quantity =>
    total(
      wanted.flatMap((cause) => amounts.get(cause.id) ?? []),
      'kgCO2e/t',
    );
  const byScope = scopes.map((scope) =>
    sheet.define(
      scopeIdOf(route.id, scope),
      `Carbon, ${scope}`,
      'kgCO2e/t',
      sumOf(causes.filter((cause) => cause.scope === scope)),
      { where: route.label, note: 'Every cause in this scope.' },
    ),
  );
  sheet.define(`${route.id}.footprint.total`, 'Carbon, all scopes', 'kgCO2e/t', total(byScope, 'kgCO2e/t'), {
    where: route.label,
    note: 'From cradle to mill gate; biogenic CO2 stands beside.',
  });
  const byContract = contractPower(sheet, plant);
  if (byContract !== null)
    sheet.define(
      contractScopeIdOf(route.id),
      'Carbon, scope 2, market-based',
      'kgCO2e/t',
      sumOf(causes.filter(({ id, scope }) => scope === 'scope 2' && id !== 'power')).plus(byContract),
      {
        where: route.label,
        note: 'Scope 2 with power by its contract in place of the average of the grid; in no sum.',
      },
    );
  recycledContent(sheet, plant);
  woodUse(sheet, plant);
  avoidedLandfill(sheet, plant);
  return reported;
}
