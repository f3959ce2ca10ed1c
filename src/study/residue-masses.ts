import { kindOfLines } from '../case/route-kind.ts';
import { streamCarbonIdOf, streamCostIdOf } from '../paper/footprint/residue-choice.ts';
import { wasteIdOf } from '../paper/footprint/waste-sums.ts';
import type { RouteModel } from '../paper/route.ts';
import { wasteCodeOf } from '../paper/waste-codes.ts';
import type { StreamMass, WasteMass } from './footprint-result.ts';
import type { OpenCase } from './open-case.ts';

/** Each residue stream of a route: how much of it, where it goes, and what its way costs and emits. */
export function streamMasses({ values, content }: OpenCase, { plant, residues }: RouteModel): readonly StreamMass[] {
  const kind = kindOfLines(plant.route.lines, content.materials);
  return residues.map(({ stream, label, parts }) => {
    const id = `${plant.route.id}.residue.${stream}`;
    const [dry, wet] = [values.number(`${id}.dry`), values.number(`${id}.wet`)];
    const split = parts.map(({ destination }) => {
      const quantityId = `${id}.wet.${destination.id}`;
      const there = values.number(quantityId);
      const share = wet === 0 ? 0 : there / wet;
      return {
        destination: destination.id,
        label: destination.label,
        kind: destination.kind,
        share,
        wet: there,
        dry: dry * share,
        quantityId,
      };
    });
    const [costId, carbonId] = [streamCostIdOf(plant.route.id, stream), streamCarbonIdOf(plant.route.id, stream)];
    const [cost, carbon] = [values.number(costId), values.number(carbonId)];
    const ids = { quantityId: `${id}.wet`, dryId: `${id}.dry`, costId, carbonId };
    const wasteCode = wasteCodeOf(stream, kind, content.wasteCodes);
    return { stream, label, dry, wet, cost, carbon, ...ids, wasteCode, parts: split };
  });
}

/** All residues of a route together, and by destination. */
export function wasteMass({ values, content }: OpenCase, routeId: string): WasteMass {
  const mass = (destination?: string) => {
    const [dryId, wetId] = [wasteIdOf(routeId, 'dry', destination), wasteIdOf(routeId, 'wet', destination)];
    return { dry: values.number(dryId), wet: values.number(wetId), dryId, wetId };
  };
  const destinations = content.destinations.map(({ id, label, kind }) => ({
    destination: id,
    label,
    kind,
    ...mass(id),
  }));
  return { ...mass(), destinations };
}
