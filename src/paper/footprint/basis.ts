import type { FootprintBasis } from '../../case/case.ts';

/** What a footprint rests on where the case says nothing. */
const usualBasis: Required<FootprintBasis> = {
  fuel: 'natural-gas',
  grid: 'EU',
  gwp: 'AR5',
  climate: 'boreal-temperate-wet',
};

export function basisOf(basis: FootprintBasis | undefined): Required<FootprintBasis> {
  return { ...usualBasis, ...basis };
}
