import { boardPage } from './board-page.ts';
import { type Markup, element } from './markup.ts';
import type { PaperFacts } from './paper-facts.ts';
import type { PaperSettings } from './paper-settings.ts';
import { assumptionsPart } from './sections/assumptions-part.ts';
import { cautionsPart } from './sections/cautions-part.ts';
import { footprintPart } from './sections/footprint-part.ts';
import { investmentPart } from './sections/investment-part.ts';
import { linesPart } from './sections/lines-part.ts';
import { residuesPart } from './sections/residues-part.ts';
import { scenariosPart } from './sections/scenarios-part.ts';
import { statementPart } from './sections/statement-part.ts';
import { swingsPart } from './sections/swings-part.ts';
import { trialsPart } from './sections/trials-part.ts';

/** The whole case on paper: the page for the board, then every statement and result, and every input with its source. */
export function fullReport(facts: PaperFacts, settings: PaperSettings): Markup {
  const { locale } = settings;
  const parts = [
    statementPart,
    linesPart,
    footprintPart,
    residuesPart,
    swingsPart,
    trialsPart,
    scenariosPart,
    investmentPart,
    cautionsPart,
    assumptionsPart,
  ];
  return element(
    'div',
    {},
    boardPage(facts, settings),
    parts.map((part) => part(facts, locale)),
  );
}
