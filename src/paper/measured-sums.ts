import { type Quantity, total } from '../kernel/expression/quantity.ts';
import type { Plant } from './plant.ts';
import type { Residue } from './residue.ts';
import type { Sheet } from './sheet.ts';

/** Streams that a mill weighs together: what screens, cleaners and pulpers throw out, and what is pressed from water. */
const rejects: ReadonlySet<string> = new Set(['rope', 'junk', 'coarse', 'fine', 'cleaner', 'light', 'broke']);
const sludges: ReadonlySet<string> = new Set(['deinking', 'wash', 'primary', 'biological']);

/** Sums that a mill has on its own books or weighbridge, so that the measured figure can stand beside them. */
export function measuredSums(sheet: Sheet, { route, lines }: Plant, streams: readonly Residue[]): void {
  const where = route.label;
  const wet = (names: ReadonlySet<string>): Quantity =>
    total(
      streams.filter(({ stream }) => names.has(stream)).map((each) => each.wet),
      'wet-t/t',
    );
  const feeds = total(
    lines.map((line) => line.feed),
    'bdt/t',
  );
  sheet.define(`${route.id}.fibreBought`, 'Fibre bought, bone-dry', 'bdt/t', feeds, {
    where,
    note: 'Dry feed of all lines.',
  });
  const fibre = lines.flatMap(({ accepts }) => [accepts.fibre, accepts.fines, accepts.wetStrength]);
  sheet.define(`${route.id}.fibreInStock`, 'Fibre and fines in the stock', 'bdt/t', total(fibre, 'bdt/t'), {
    where,
    note: 'What all lines bring to the blend chest, wet-strength paper with it.',
  });
  sheet.define(`${route.id}.rejectsHauled`, 'Rejects, as hauled', 'wet-t/t', wet(rejects), {
    where,
    note: 'Pulper, screen, cleaner and broke-line rejects, wet.',
  });
  sheet.define(`${route.id}.sludgeHauled`, 'Sludge, as hauled', 'wet-t/t', wet(sludges), {
    where,
    note: 'Deinking, wash, primary and biological sludge, wet.',
  });
}
