import type { StreamMass } from '../../../src/index.ts';
import { wasteCodeText } from '../../../src/wording/waste-code-phrase.ts';
import type { Cells } from './cells.ts';
import type { Facing } from './route-names.ts';
import type { Scale } from './scales.ts';

/** What leaves as cells: a row for each stream, route and destination, with the waste code and the mass that goes there. */
export function leaveCells({ base, with: other }: Facing, { factor, unit }: Scale, per: string): Cells {
  const heads = ['stream', 'route', 'waste code', 'to', `dry, ${unit} ${per}`, `wet, ${unit} ${per}`];
  const rows = [base, other].flatMap(({ label: route, streams }) =>
    streams.flatMap((stream) => rowsOf(stream, route, factor)),
  );
  return [heads, ...rows];
}

function rowsOf({ label, wasteCode, parts }: StreamMass, route: string, factor: number): Cells {
  const used = parts.filter(({ share }) => share > 0);
  return used.map((part) => [
    label,
    route,
    wasteCodeText(wasteCode),
    part.label,
    rounded(part.dry * factor),
    rounded(part.wet * factor),
  ]);
}

// Ten digits are more than anybody measures, and fewer than binary fractions spoil.
const rounded = (value: number): number => Number(value.toPrecision(10));
