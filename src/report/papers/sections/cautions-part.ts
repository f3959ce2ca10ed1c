import { publicClaimCaution } from '../../../wording/claim-caution-sentence.ts';
import { type Markup, element } from '../markup.ts';
import type { PaperFacts } from '../paper-facts.ts';
import { part } from '../part.ts';

/** Everything there is to look at before the figures are relied on, and the laws they were checked against. */
export function cautionsPart({ spread }: PaperFacts): Markup {
  const checks = spread.checks.map(({ label, kept }) => element('li', {}, kept ? `${label}: yes` : `${label}: NO`));
  const warnings = spread.warnings.map(({ sentence }) => element('li', {}, sentence));
  return part(
    'Cautions and checks',
    '',
    warnings.length === 0 ? element('p', {}, 'Nothing stands out.') : element('ul', {}, warnings),
    element('p', {}, publicClaimCaution),
    element('ul', {}, checks),
  );
}
