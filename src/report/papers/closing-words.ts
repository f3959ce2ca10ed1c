import { publicClaimCaution } from '../../wording/claim-caution-sentence.ts';
import { type Markup, element } from './markup.ts';
import type { PaperFacts } from './paper-facts.ts';

const mostTold = 2;

/** What must be known to read the page rightly: basis, what is left out, and what to look at. */
export function closingWords({ spread, plan, footprint }: PaperFacts): Markup {
  const { warnings } = spread;
  const money =
    plan === null
      ? `Prices of ${spread.priceYear}.`
      : `Present value and return before financing, ${plan.results.plan.money} terms, prices of ${spread.priceYear}.`;
  const carbon = `Carbon by the ${footprint.basis.allocation} rule with the warming potentials of ${footprint.basis.gwp}; biogenic carbon and avoided landfill of the recovered paper are not counted.`;
  return element(
    'p',
    { class: 'care' },
    [money, carbon, publicClaimCaution, looks(warnings.map(({ sentence }) => sentence))].join(' '),
  );
}

function looks(sentences: readonly string[]): string {
  if (sentences.length === 0) return '';
  const told = sentences.slice(0, mostTold).join(' ');
  const more = sentences.length - mostTold;
  return `To look at: ${told}${more > 0 ? ` And ${String(more)} more in the full report.` : ''}`;
}
