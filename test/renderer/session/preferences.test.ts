import { describe, expect, it } from 'vitest';
import { Book } from '../../../renderer/session/book.svelte.ts';
import { localeChoices, zoomChoices } from '../../../renderer/session/preference-choices.ts';
import { themeOnPage } from '../../../renderer/session/theme-in-force.ts';
import { FakeHost } from '../fake-host.ts';
import { demonstration, EngineInThread } from '../open-demonstration.ts';

describe('preferences', () => {
  it('change how numbers and money are written at once, and are kept', async () => {
    const host = new FakeHost();
    const book = new Book(host.asHost(), new EngineInThread(), demonstration);
    await book.start();
    expect(book.numbers.digits('1234.5')).toBe('1,234.5');
    expect(book.numbers.unit('EUR/t')).toBe('€/t');

    await book.preferences.change({ numberLocale: 'de-DE', currencyText: 'code' });

    expect(book.numbers.digits('1234.5')).toBe('1.234,5');
    expect(book.numbers.unit('EUR/t')).toBe('EUR/t');
    expect(book.numbers.symbol).toBe('EUR');
    expect(host.preferences).toMatchObject({ numberLocale: 'de-DE', currencyText: 'code', zoom: 100 });
  });

  it('take in what the menu changed meanwhile when their sheet is laid', async () => {
    const host = new FakeHost();
    const book = new Book(host.asHost(), new EngineInThread(), demonstration);
    await book.start();
    host.preferences = { ...host.preferences, zoom: 150 };

    await book.do('preferences');
    await book.preferences.change({ theme: 'dark' });

    expect(book.sheet).toBe('preferences');
    expect(host.preferences).toMatchObject({ theme: 'dark', zoom: 150 });
  });

  it('offer each way of writing numbers once, the system’s own first', () => {
    const choices = localeChoices('en-GB', 'sv-SE');

    expect(choices[0]).toEqual({ value: '', label: 'As the system: 1,234,567.50' });
    expect(choices[1]?.value).toBe('sv-SE');
    const looks = choices.slice(1).map(({ label }) => label.split(' (')[0]);
    expect(new Set(looks).size).toBe(looks.length);
    expect(looks.length).toBeGreaterThan(4);
  });

  it('show a zoom that is none of the steps', () => {
    expect(zoomChoices(103).map(({ label }) => label)).toContain('103 %');
    expect(zoomChoices(100)).toHaveLength(11);
  });

  it('ask for strong contrast where the person or the system wants it, and never against the person', () => {
    expect(themeOnPage('system', true)).toBe('contrast');
    expect(themeOnPage('system', false)).toBeNull();
    expect(themeOnPage('light', true)).toBe('light');
    expect(themeOnPage('contrast', false)).toBe('contrast');
  });
});
