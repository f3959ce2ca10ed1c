import { type InputDeclaration, inForce } from '../kernel/graph/input-declaration.ts';
import { basisOf } from '../paper/footprint/basis.ts';
import { carbonDifferenceId } from '../paper/footprint/carbon-difference.ts';
import { besideInventory, factOf, isCarbonFactor } from '../paper/footprint/carbon-inputs.ts';
import { factorRange } from './factor-range.ts';
import type { OpenCase } from './open-case.ts';
import { ResultTape } from './result-tape.ts';

/** What stands in the way of saying in public that one route is better for the climate. */
export type ClaimCaution =
  | { readonly kind: 'too close to call'; readonly about: string; readonly difference: number; readonly doubt: number }
  | { readonly kind: 'mixed years'; readonly about: string; readonly years: readonly string[] }
  | {
      readonly kind: 'mixed warming potentials';
      readonly about: string;
      readonly wanted: string;
      readonly others: readonly string[];
      readonly count: number;
    }
  | { readonly kind: 'unsourced factors'; readonly about: string; readonly count: number; readonly of: number };

export function claimCautions(open: OpenCase): readonly ClaimCaution[] {
  const factors = open.model.graph.inputs.filter((input) => isCarbonFactor(input) && !besideInventory.has(input.id));
  return [
    ...closeCall(open, factors),
    ...mixedYears(factors),
    ...mixedWarmingPotentials(open, factors),
    ...unsourced(factors),
  ];
}

/**
 * The difference against the doubt in the factors: each moved to the ends of its range alone, half the swings added as squares. A rule of
 * thumb (common practice, no source): the ranges are no intervals of known confidence, and the factors are taken as independent.
 */
function closeCall(open: OpenCase, factors: readonly InputDeclaration[]): readonly ClaimCaution[] {
  const difference = open.values.number(carbonDifferenceId);
  if (!Number.isFinite(difference)) return [];
  const tape = new ResultTape(open, carbonDifferenceId);
  const squares = factors.flatMap((input): number[] => {
    const range = factorRange(input);
    if (range === null || !tape.reaches(input.id)) return [];
    const swing = tape.at(input.id, range.high) - tape.at(input.id, range.low);
    return Number.isFinite(swing) ? [(swing / 2) ** 2] : [];
  });
  const doubt = Math.sqrt(squares.reduce((sum, square) => sum + square, 0));
  return Math.abs(difference) < doubt
    ? [{ kind: 'too close to call', about: carbonDifferenceId, difference, doubt }]
    : [];
}

/** Constants of physics and of decay belong to no year's set. */
export const timeless: ReadonlySet<string> = new Set(['global warming potential', 'decay']);

function mixedYears(factors: readonly InputDeclaration[]): readonly ClaimCaution[] {
  const dated = factors.filter((input) => !timeless.has(input.usual.provenance.details?.['boundary'] ?? ''));
  const years = [...new Set(dated.map((input) => factOf(input, 'year')).filter((year) => year !== ''))].sort();
  return years.length > 1 ? [{ kind: 'mixed years', about: carbonDifferenceId, years }] : [];
}

/** The set chosen for the case turns methane of landfills into CO2e; figures that come in CO2e keep the set they were made with. */
function mixedWarmingPotentials({ content }: OpenCase, factors: readonly InputDeclaration[]): readonly ClaimCaution[] {
  const wanted = basisOf(content.basis).gwp;
  const sets = factors
    .filter((input) => inForce(input) !== null)
    .map((input) => factOf(input, 'gwp'))
    .filter((set) => set !== '' && set !== 'none' && set !== wanted);
  const others = [...new Set(sets)].sort();
  return others.length === 0
    ? []
    : [{ kind: 'mixed warming potentials', about: carbonDifferenceId, wanted, others, count: sets.length }];
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
