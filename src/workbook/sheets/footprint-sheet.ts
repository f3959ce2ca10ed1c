import { nodeNamed } from '../../kernel/graph/graph.ts';
import type { RouteFootprint } from '../../study/footprint-result.ts';
import { footprint } from '../../study/footprint.ts';
import { wasteCodeCaution, wasteCodeText } from '../../wording/waste-code-phrase.ts';
import { unitLabel } from '../../wording/unit-label.ts';
import { heads, note, strong, text } from '../cells.ts';
import type { Verdict } from '../checks/verdict.ts';
import type { ModelCells } from '../model/model-cells.ts';
import type { Cell, SheetPlan } from '../plan.ts';
import { framed } from './framed.ts';
import { linkCell } from './link-cell.ts';

/** What each route leaves, burns and lets off, per tonne of product: residues by stream and way, energy, water, carbon by cause. */
export function footprintSheet(cells: ModelCells, name: string, verdict: Verdict): SheetPlan {
  const { basis, routes, difference } = footprint(cells.open);
  const linked: Linked = (label, id, says) => quantityRow(cells, name, label, id, says);
  return framed({
    name,
    title: 'Residues and footprint',
    says: `Per tonne of product. Fuel ${basis.fuel}, grid ${basis.grid}, warming potentials ${basis.gwp}, landfill ${basis.climate}; recovered paper comes free of what went before (cut-off).`,
    verdict,
    heads: heads('Quantity', 'Value', 'Unit', 'Also'),
    widths: [64, 18, 26, 30],
    rows: [
      ...routes.flatMap((route) => [[strong(route.label)], ...routeRows(route, linked), []]),
      [strong('Difference')],
      ...difference.scopes.flatMap(({ scope, quantityId }) => linked(`Difference, ${scope}`, quantityId)),
      ...linked('Difference of the whole footprint', difference.totalId),
      [],
      [note(wasteCodeCaution)],
      [note(basis.attribution)],
    ],
    frozenColumns: 1,
  });
}

type Linked = (label: string, id: string, says?: string) => readonly (readonly Cell[])[];

function routeRows(route: RouteFootprint, linked: Linked): readonly (readonly Cell[])[] {
  const { streams, causes, scopes, water, waste, id } = route;
  return [
    ...linked('All residues, as hauled', waste.wetId),
    ...linked('All residues, dry', waste.dryId),
    ...waste.destinations.flatMap((each) => linked(`All residues to ${each.label}, as hauled`, each.wetId)),
    ...streams.flatMap((stream) => [
      ...linked(`${stream.label}, as hauled`, stream.quantityId, `Waste code ${wasteCodeText(stream.wasteCode)}`),
      ...linked(`${stream.label}, dry`, stream.dryId),
      ...stream.parts.flatMap((part) => linked(`${stream.label} to ${part.label}, as hauled`, part.quantityId)),
    ]),
    ...linked('Electricity', `${id}.electricity.total`),
    ...linked('Heat', `${id}.heat.total`),
    ...linked('Fresh water', water.freshId),
    ...linked('Effluent', water.effluentId),
    ...causes.flatMap((cause) => linked(`${cause.label}, ${cause.scope}`, cause.quantityId)),
    ...scopes.flatMap(({ scope, quantityId }) => linked(`Footprint, ${scope}`, quantityId)),
    ...linked('Whole footprint', route.totalId),
    ...linked(
      'Beside the sum: landfill that the bought recovered paper was kept from',
      route.avoidedLandfill.quantityId,
    ),
  ];
}

function quantityRow(
  cells: ModelCells,
  sheet: string,
  label: string,
  id: string,
  says = '',
): readonly (readonly Cell[])[] {
  const { graph } = cells.open.model;
  if (!graph.positions.has(id)) return [];
  const { unit } = nodeNamed(graph, id);
  return [[text(`   ${label}`), linkCell(cells, id, sheet), text(unitLabel(unit.text)), note(says)]];
}
