import { decision, terms } from './board-verdict.ts';
import { bridgeDrawing } from './bridge-drawing.ts';
import { closingWords } from './closing-words.ts';
import { figuresStrip } from './figures-strip.ts';
import { type Markup, element } from './markup.ts';
import type { PaperFacts } from './paper-facts.ts';
import type { PaperSettings } from './paper-settings.ts';
import { dateText } from './paper-words.ts';
import { perTonneTable } from './per-tonne-table.ts';
import { restsTable } from './rests-table.ts';
import { turningTable } from './turning-table.ts';

/** One page for a board: the answer, how sure it is, the bridge, what could turn it, and what it rests on. */
export function boardPage(facts: PaperFacts, settings: PaperSettings): Markup {
  const { locale } = settings;
  return element(
    'article',
    { class: `board ${settings.format}` },
    masthead(facts, settings, 'Summary for the board'),
    element('p', { class: 'decide' }, decision(facts, locale)),
    element('p', {}, terms(facts, locale)),
    figuresStrip(facts, locale),
    bridgeDrawing(facts.spread, locale),
    element('section', { class: 'two' }, turningTable(facts, locale), perTonneTable(facts, locale)),
    restsTable(facts, locale),
    closingWords(facts),
  );
}

function masthead({ spread }: PaperFacts, { locale, date }: PaperSettings, what: string): Markup {
  return element(
    'header',
    {},
    element('h1', {}, spread.title),
    element('p', {}, `${what}, ${dateText(date, locale)}`, element('br'), `An estimate, prices of ${spread.priceYear}`),
  );
}
