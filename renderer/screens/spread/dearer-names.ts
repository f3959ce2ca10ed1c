import type { Spread } from '../../../src/index.ts';

/** What a bar to either side of the fold's axis says: it leans to the page that pays more. */
export function dearerNames({ base, with: other }: Spread): readonly [string, string] {
  if (base.kind === other.kind) return ['left dearer', 'right dearer'];
  return [`${base.kind} dearer`, `${other.kind} dearer`];
}
