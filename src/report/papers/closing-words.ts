import { publicClaimCaution } from '../../wording/claim-caution-sentence.ts';
import { type Markup, element } from './markup.ts';
import type { PaperFacts } from './paper-facts.ts';

// The page is one sheet: what is to be looked at is told as far as there is room, and the rest counted.
const roomForLetters = 210;

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
  const told = sentences.filter((_, place) => sentences.slice(0, place + 1).join(' ').length <= roomForLetters);
  const more = sentences.length - told.length;
  if (sentences.length === 0) return '';
  if (told.length === 0) return `${String(more)} things to look at stand in the full report.`;
  return `To look at: ${told.join(' ')}${more > 0 ? ` And ${String(more)} more in the full report.` : ''}`;
}
