import type { Quantity } from '../../kernel/expression/quantity.ts';
import { boughtPower } from '../bought-power.ts';
import { marginalGridFactor } from '../carbon-factors.ts';
import type { Sheet } from '../sheet.ts';
import { basisOf } from './basis.ts';
import { contractScopeIdOf } from './contract-power.ts';
import { factorInput } from './factor-input.ts';
import { scopeIdOf, scopes } from './footprint.ts';

export const carbonDifferenceId = 'difference.footprint.total';
export const marginalPowerId = 'difference.footprint.marginalPower';

/** What separates the two routes in carbon, by scope, and what their difference in power moves on the grid at the margin. */
export function writeCarbonDifference(sheet: Sheet): void {
  const { base, with: other } = sheet.case.compare;
  const less = (id: string, label: string, of: (routeId: string) => string): void => {
    const [minuend, subtrahend] = [sheet.graph.later(of(other), 'kgCO2e/t'), sheet.graph.later(of(base), 'kgCO2e/t')];
    sheet.define(id, label, 'kgCO2e/t', minuend.minus(subtrahend), { where: 'Difference' });
  };
  for (const scope of scopes)
    less(scopeIdOf('difference', scope), `Carbon, ${scope}`, (routeId) => scopeIdOf(routeId, scope));
  less(carbonDifferenceId, 'Carbon, all scopes', (routeId) => `${routeId}.footprint.total`);
  if (sheet.isGiven('carbon.contract'))
    less(contractScopeIdOf('difference'), 'Carbon, scope 2, market-based', contractScopeIdOf);
  const figure = marginalGridFactor(basisOf(sheet.case.basis).grid);
  if (figure === undefined && !sheet.isGiven('carbon.gridMarginal')) return;
  const label = 'Grid electricity, marginal: the effect of a change only';
  const marginal =
    figure === undefined ? marginalGiven(sheet, label) : factorInput(sheet, 'carbon.gridMarginal', label, figure);
  const used = (routeId: string) => boughtPower(sheet, routeId);
  sheet.define(
    marginalPowerId,
    'What the difference in power moves on the grid',
    'kgCO2e/t',
    used(other).minus(used(base)).times(marginal),
    {
      where: 'Difference',
      note: 'Difference in electricity times the marginal factor: the effect of a change, never part of an inventory.',
    },
  );
}

/** For a region without a known margin: no default to go by, and as much in need of a source and of the right boundary. */
function marginalGiven(sheet: Sheet, label: string): Quantity {
  const id = 'carbon.gridMarginal';
  const wanted = 'generation of electricity';
  const { source = '', boundary = wanted } = sheet.case.inputs[id] ?? {};
  if (source.trim() === '') sheet.problems.push({ kind: 'no source', id, label });
  if (boundary !== wanted) sheet.problems.push({ kind: 'wrong boundary', id, label, given: boundary, wanted });
  return sheet.input({ id, label, unit: 'kgCO2e/kWh', allowed: { least: '0' } });
}
