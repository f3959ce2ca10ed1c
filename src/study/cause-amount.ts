import { inForce } from '../kernel/graph/input-declaration.ts';
import { factOf } from '../paper/footprint/carbon-inputs.ts';
import type { ReportedCause } from '../paper/footprint/footprint.ts';
import type { CauseAmount, FactorUsed } from './footprint-result.ts';
import type { OpenCase } from './open-case.ts';

/** What comes from one cause, with the factors in force behind it. */
export function causeAmount({ model, values }: OpenCase, { factorIds, ...cause }: ReportedCause): CauseAmount {
  const inputs = new Map(model.graph.inputs.map((input) => [input.id, input]));
  const factors = factorIds.flatMap((id): FactorUsed[] => {
    const input = inputs.get(id);
    if (input === undefined) return [];
    const provenance = input.given?.provenance ?? input.usual.provenance;
    return [
      {
        id,
        label: input.label,
        value: inForce(input) ?? '',
        unit: input.entryUnit,
        year: factOf(input, 'year'),
        boundary: input.usual.provenance.details?.['boundary'] ?? '',
        allocation: factOf(input, 'allocation'),
        gwp: factOf(input, 'gwp'),
        status: provenance.status,
        source: provenance.source,
      },
    ];
  });
  return { ...cause, amount: values.number(cause.quantityId), factors };
}
