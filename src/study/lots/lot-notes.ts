import type { LotNote } from './lot-note.ts';
import type { Worked } from './worked-lot.ts';
import { isOver } from './tolerance.ts';

/** Everything that is to be said of a lot beside its figures. */
export function lotNotes({ terms, isExpired, cost }: Worked): readonly LotNote[] {
  const { lot, notes, moisture, unusable, excess, charged, ash } = terms;
  const found: LotNote[] = [...notes];
  if (moisture.mean >= 100) found.push({ kind: 'no dry matter' });
  if (unusable.mean === 100) found.push({ kind: 'nothing usable' });
  if (unusable.mean + (ash ?? 0) > 100) found.push({ kind: 'more than the whole' });
  if (charged < 0) found.push({ kind: 'fee received' });
  if (excess.nonPaper > 0) found.push({ kind: 'over tolerance', what: 'non-paper', over: excess.nonPaper });
  if (excess.unwanted > 0) found.push({ kind: 'over tolerance', what: 'unwanted', over: excess.unwanted });
  if (lot.remedy === 'refuse' && isOver(excess)) found.push({ kind: 'refused' });
  if (lot.remedy === 'claim' && isOver(excess) && lot.basis !== 'as received')
    found.push({ kind: 'not settled on this basis' });
  if (isExpired) found.push({ kind: 'expired', day: lot.validUntil ?? '' });
  const isExplained = found.some(({ kind }) => explains.has(kind));
  if (Number.isNaN(cost) && !isExplained) found.push({ kind: 'cannot be worked out' });
  return found;
}

const explains: ReadonlySet<LotNote['kind']> = new Set([
  'lacks',
  'no dry matter',
  'nothing usable',
  'more than the whole',
]);
