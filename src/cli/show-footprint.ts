import { footprint, publicClaimCaution, spreadOf } from '../index.ts';
import { footprintPage } from '../report/footprint-page.ts';
import type { Console } from './console.ts';
import { type SetOptions, openWithSets, wholly } from './open-with-sets.ts';

export interface FootprintOptions extends SetOptions {
  readonly json?: boolean;
}

/** Prints landfill, energy, carbon, water and recycled content of every route. */
export function showFootprint(console: Console, file: string, options: FootprintOptions): void {
  const open = wholly(openWithSets(file, options));
  const found = footprint(open);
  const warnings = spreadOf(open).warnings.map(({ sentence, about }) => ({ sentence, about }));
  if (options.json === true)
    console.say(`${JSON.stringify({ ...found, warnings, caution: publicClaimCaution }, null, 2)}\n`);
  else
    console.say(
      footprintPage(
        found,
        warnings.map(({ sentence }) => sentence),
        console.locale,
      ),
    );
}
