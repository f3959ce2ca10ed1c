import type { Case } from '../case/case.ts';
import type { RouteKind } from '../case/route-kind.ts';

/** A code of the European List of Waste, and what the list says it is. `text` is "" for a code that is not kept here. */
export interface WasteCode {
  readonly code: string;
  readonly text: string;
  /** Somebody gave it for the case; otherwise it is the usual one. */
  readonly isGiven: boolean;
}

// Commission Decision 2000/532/EC as amended by 2014/955/EU, Annex, chapter 03 03; from memory, to be verified.
const texts: ReadonlyMap<string, string> = new Map([
  ['03 03 05', 'de-inking sludges from paper recycling'],
  ['03 03 07', 'mechanically separated rejects from pulping of waste paper and cardboard'],
  ['03 03 10', 'fibre rejects, fibre-, filler- and coating-sludges from mechanical separation'],
  ['03 03 11', 'sludges from on-site effluent treatment other than those mentioned in 03 03 10'],
]);

const ofRecovered: ReadonlyMap<string, string> = new Map([
  ['rope', '03 03 07'],
  ['junk', '03 03 07'],
  ['coarse', '03 03 07'],
  ['fine', '03 03 07'],
  ['cleaner', '03 03 07'],
  ['light', '03 03 07'],
  ['deinking', '03 03 05'],
  ['wash', '03 03 05'],
]);

// What screens and cleaners take out of bought pulp is no reject from pulping of waste paper; wire and junk of its bales are packaging.
const ofVirgin: ReadonlyMap<string, string> = new Map([
  ['coarse', '03 03 10'],
  ['fine', '03 03 10'],
  ['cleaner', '03 03 10'],
  ['light', '03 03 10'],
]);

const ofEither: ReadonlyMap<string, string> = new Map([
  ['primary', '03 03 10'],
  ['broke', '03 03 10'],
  ['biological', '03 03 11'],
]);

/**
 * The code of a stream: as given for the case, else the usual one of such a stream. Null where none is usual: ash of burned residues stands in
 * chapter 10 01 under pairs of entries that only a test for hazard decides between.
 */
export function wasteCodeOf(stream: string, kind: RouteKind, given: Case['wasteCodes']): WasteCode | null {
  const own = given?.find((each) => each.stream === stream)?.code;
  const usual = ofEither.get(stream) ?? (kind === 'virgin' ? ofVirgin : ofRecovered).get(stream);
  const code = own ?? usual;
  return code === undefined ? null : { code, text: texts.get(code) ?? '', isGiven: own !== undefined };
}
