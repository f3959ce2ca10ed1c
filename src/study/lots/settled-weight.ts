import type { LotTerms } from './lot-terms.ts';
import type { SettledWeight } from './priced-lot.ts';

/**
 * What is paid for of a lot, and what is not. `perTonne` are the payable tonnes for a tonne as received that the model found; only for a price
 * per tonne as received is there anything to claim, since the other bases pay for dry matter alone.
 */
export function settledWeight(terms: LotTerms, perTonne: number): SettledWeight {
  const { lot, tonnes, charged, moisture, moistureLimit, moistureTolerance } = terms;
  const payable = tonnes * perTonne;
  const isClaimed = lot.basis === 'as received' && charged > 0;
  if (!isClaimed) return { perTonne, payable, moistureTonnes: 0, moistureClaim: 0, unusableClaim: 0 };
  const isWet = moisture.mean > moistureLimit + moistureTolerance;
  const dry =
    lot.settlement === 'point for point'
      ? 1 - (moisture.mean - moistureLimit) / 100
      : (100 - moisture.mean) / (100 - moistureLimit);
  const settled = isWet ? dry : 1;
  const moistureTonnes = tonnes * (1 - settled);
  return {
    perTonne,
    payable,
    moistureTonnes,
    moistureClaim: moistureTonnes * charged,
    unusableClaim: (tonnes * settled - payable) * charged,
  };
}
