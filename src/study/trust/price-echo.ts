import { changeInput, type OpenCase } from '../open-case.ts';

/** What a price comes to in the model's own unit: money of the case per bone-dry tonne, everything agreed about it counted. */
export interface PriceEcho {
  readonly perBoneDry: number;
  readonly unit: string;
}

/** What a price would mean if it were typed over that input; null where it is no price of fibre, or cannot be read or worked out yet. */
export function priceEcho(open: OpenCase, id: string, typed: string): PriceEcho | null {
  const [, material] = /^material\.([^.]+)\.price$/u.exec(id) ?? [];
  if (material === undefined) return null;
  const changed = changeInput(open, id, typed);
  if (!changed.ok) return null;
  const perBoneDry = changed.value.values.number(`material.${material}.cost`);
  return Number.isFinite(perBoneDry) ? { perBoneDry, unit: `${open.content.currency}/bdt` } : null;
}
