import { beforeAll, describe, expect, it } from 'vitest';
import demonstration from '../../../examples/demonstration.tonne?raw';
import plan from '../../../examples/plan.tonne?raw';
import { openCase } from '../../../src/study/open-case.ts';
import { boardPage } from '../../../src/report/papers/board-page.ts';
import { fullReport } from '../../../src/report/papers/full-report.ts';
import { paperDocument } from '../../../src/report/papers/paper-document.ts';
import { type PaperFacts, paperFacts } from '../../../src/report/papers/paper-facts.ts';
import type { PaperSettings } from '../../../src/report/papers/paper-settings.ts';

const settings: PaperSettings = {
  locale: 'en-GB',
  date: '2026-11-25',
  fileName: 'mill "A" \\ .tonne',
  mark: '0a1b2c3d',
  version: '0.1.0',
  format: 'A4',
};

function factsOf(text: string): PaperFacts {
  // Few trials: what is printed of them is looked at, not how well they settle.
  const opened = openCase(text.replace(/"trials": \d+/u, '"trials": 1000'));
  if (!opened.ok) throw new Error('the example cannot be opened');
  return paperFacts(opened.value, settings.date);
}

/** What a reader sees, without the markup around it. */
function words(html: string): string {
  return html
    .replace(/<br\/>/gu, ' ')
    .replace(/<[^>]+>/gu, '|')
    .replace(/&quot;/gu, '"')
    .replace(/&#39;/gu, "'")
    .replace(/&lt;/gu, '<')
    .replace(/&amp;/gu, '&');
}

describe('the page for a board', () => {
  let facts: PaperFacts;
  let text: string;
  beforeAll(() => {
    facts = factsOf(plan);
    text = words(boardPage(facts, settings).html);
  });

  it('says which route costs less, by the same figures as the home page', () => {
    const { difference } = facts.spread;
    expect(Number(difference.shownPerTonne)).toBeLessThan(0);
    expect(text).toContain(
      `€${difference.shownPerTonne.slice(1)} less by “Recovered middle ply” than by “Virgin middle ply”`,
    );
    expect(text).toContain(`€${difference.shownPerYear.slice(1)} million a year`);
  });

  it('says on what it holds before anything else that could be taken for certain', () => {
    expect(text).toContain('if both make the same product (not confirmed)');
    expect(text).toContain('before financing');
    expect(text).toContain('An estimate, prices of 2024');
    expect(text).toContain('25 November 2026');
  });

  it('gives the measures of the plan as the plan gives them', () => {
    const npv = facts.plan?.results.npv ?? NaN;
    expect(text).toContain(`${(npv / 1e6).toFixed(1)} |€ million`);
    expect(text).toContain(`${((facts.plan?.results.internal?.rates[0]?.rate ?? NaN) * 100).toFixed(1)} |%`);
  });

  it('draws every step of the bridge with its figure', () => {
    for (const group of facts.spread.groups) {
      const shown = group.difference.shownPerTonne.replace('-', '\u2212');
      expect(text).toContain(`|${shown.startsWith('\u2212') || Number(shown) === 0 ? '' : '+'}${shown}|`);
    }
  });

  it('leaves the figures of the machine, which both routes share, out of what could turn it', () => {
    const table = text.slice(text.indexOf('What could turn it'), text.indexOf('Per tonne of product'));
    expect(table).toContain('net price agreed');
    expect(table).not.toContain('machine');
  });
});

describe('a paper as a file', () => {
  it('holds names as text and fetches nothing', () => {
    const hostile = plan.replace('"Recovered middle ply"', '"<img src=x onerror=alert(1)>"');
    expect(hostile).not.toBe(plan);
    const facts = factsOf(hostile);
    const page = paperDocument(facts.spread, fullReport(facts, settings), settings);
    expect(page).not.toContain('<img');
    expect(page).toContain('&lt;img src=x onerror=alert(1)&gt;');
    expect(page).not.toMatch(/https?:\/\/[^\s"<]*\.(css|js|woff2?)/u);
    expect(page).not.toMatch(/<script|<link|url\(http/u);
  });

  it('writes the name of the file at the foot as text of a style, whatever stands in it', () => {
    const facts = factsOf(demonstration);
    const page = paperDocument(facts.spread, boardPage(facts, settings), settings);
    expect(page).toContain(
      '@bottom-left { content: "mill \\22 A\\22  \\5c  .tonne, case 0a1b2c3d, Tonne for Tonne 0.1.0"',
    );
    expect(page).toContain('All checks pass');
  });

  it('lists every input that has a figure with a source, and none twice', () => {
    const facts = factsOf(demonstration);
    const page = words(fullReport(facts, settings).html);
    const given = Object.values(facts.spread.inputs).filter(({ value }) => value !== '');
    const assumptions = page.slice(page.indexOf('Assumptions and their sources'));
    expect(given.length).toBeGreaterThan(300);
    for (const { label } of given) expect(assumptions).toContain(label);
    const rows = fullReport(facts, settings).html.split('Assumptions and their sources')[1]?.match(/<tr>/gu) ?? [];
    // Two tables, each with a row of headings.
    expect(rows).toHaveLength(given.length + 2);
    for (const source of new Set(given.map((input) => input.source))) expect(assumptions).toContain(source);
  });
});
