import { evaluateFloat, floatProgram } from '../kernel/evaluate/float.ts';
import { type InputDeclaration, inForce } from '../kernel/graph/input-declaration.ts';
import { carbonDifferenceId } from '../paper/footprint/carbon-difference.ts';
import type { OpenCase } from './open-case.ts';

/** What stands in the way of saying in public that one route is better for the climate. */
export type ClaimCaution =
  | { readonly kind: 'too close to call'; readonly about: string; readonly difference: number; readonly doubt: number }
  | { readonly kind: 'mixed years'; readonly about: string; readonly years: readonly string[] }
  | { readonly kind: 'unsourced factors'; readonly about: string; readonly count: number; readonly of: number };

export function claimCautions(open: OpenCase): readonly ClaimCaution[] {
  const factors = open.model.graph.inputs.filter((input) => input.usual.provenance.details?.['boundary'] !== undefined);
  return [...closeCall(open, factors), ...mixedYears(factors), ...unsourced(factors)];
}

/**
 * The difference against the doubt in the factors: each moved to the ends of its range alone, half the swings added as squares. A rule of
 * thumb (common practice, no source): the ranges are no intervals of known confidence, and the factors are taken as independent.
 */
function closeCall({ model, values }: OpenCase, factors: readonly InputDeclaration[]): readonly ClaimCaution[] {
  const difference = values.number(carbonDifferenceId);
  const place = model.graph.positions.get(carbonDifferenceId);
  if (!Number.isFinite(difference) || place === undefined) return [];
  const program = floatProgram(model.graph);
  const room = new Float64Array(program.steps.length);
  const at = (id: string, figure: string): number =>
    evaluateFloat(program, new Map([[id, figure]]), room)[place] ?? NaN;
  const squares = factors.map(({ id, usual }) => {
    if (usual.low === null || usual.high === null) return 0;
    const swing = at(id, usual.high) - at(id, usual.low);
    return Number.isFinite(swing) ? (swing / 2) ** 2 : 0;
  });
  const doubt = Math.sqrt(squares.reduce((sum, square) => sum + square, 0));
  return Math.abs(difference) < doubt
    ? [{ kind: 'too close to call', about: carbonDifferenceId, difference, doubt }]
    : [];
}

/** Constants of physics and of decay belong to no year's set. */
const timeless = new Set(['global warming potential', 'decay']);

function mixedYears(factors: readonly InputDeclaration[]): readonly ClaimCaution[] {
  const dated = factors.filter((input) => !timeless.has(input.usual.provenance.details?.['boundary'] ?? ''));
  const years = [
    ...new Set(
      dated.filter((input) => input.given === null).flatMap((input) => input.usual.provenance.details?.['year'] || []),
    ),
  ].sort();
  return years.length > 1 ? [{ kind: 'mixed years', about: carbonDifferenceId, years }] : [];
}

function unsourced(factors: readonly InputDeclaration[]): readonly ClaimCaution[] {
  const used = factors.filter((input) => inForce(input) !== null);
  const weak = used.filter((input) =>
    ['practice', 'memory', 'none'].includes((input.given?.provenance ?? input.usual.provenance).status),
  );
  return weak.length === 0
    ? []
    : [{ kind: 'unsourced factors', about: carbonDifferenceId, count: weak.length, of: used.length }];
}
