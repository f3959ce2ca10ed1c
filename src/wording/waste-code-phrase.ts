import type { WasteCode } from '../paper/waste-codes.ts';

/** Stands wherever waste codes do. */
export const wasteCodeCaution =
  'Waste codes are the usual ones of the European List of Waste (Commission Decision 2000/532/EC as amended by 2014/955/EU, from memory) unless the case gives others. How a waste is classified is decided by its producer and the authority.';

/** "03 03 07"; "to be classified" where none is usual. */
export function wasteCodeText(code: WasteCode | null): string {
  return code === null ? 'to be classified' : code.code;
}

/** What a code stands for, and whether it is the usual one. */
export function wasteCodePhrase(code: WasteCode | null): string {
  if (code === null) return 'No waste code is usual: to be classified by test.';
  const from = code.isGiven ? 'given for this case' : 'the usual one';
  return `Waste code ${code.code}, ${from}${code.text === '' ? '' : `: ${code.text}`}.`;
}
