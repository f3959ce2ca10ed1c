import { describe, expect, it } from 'vitest';
import { NumberStyle } from '../../../renderer/numbers/number-style.ts';
import { limitCells } from '../../../renderer/screens/what-if/lower/limits/limit-cells.ts';
import { limitChoices } from '../../../renderer/screens/what-if/lower/limits/limit-choices.ts';
import { LimitDraft } from '../../../renderer/screens/what-if/lower/limits/limit-draft.svelte.ts';
import { limitRows, limitedRoutes } from '../../../renderer/screens/what-if/lower/limits/limit-rows.ts';
import { refusalWords } from '../../../renderer/screens/what-if/lower/limits/refusal-words.ts';
import { shareSentences } from '../../../renderer/screens/what-if/lower/limits/share-sentences.ts';
import { newId } from '../../../renderer/screens/what-if/lower/new-id.ts';
import { plainDigits } from '../../../renderer/screens/what-if/lower/plain-digits.ts';
import {
  type LargestShare,
  type Limit,
  editStructure,
  limitReadings,
  openCase,
  problemSentence,
  spreadOf,
} from '../../../src/index.ts';
import { demonstration, problemsOf, valueOf } from '../../examples/demonstration.ts';
import { textOfFile } from '../../case/sample-case.ts';

const open = demonstration();
const spread = spreadOf(open);
const numbers = new NumberStyle('en-GB', 'EUR');
const comma = new NumberStyle('de-DE', 'EUR');
const readings = limitReadings(open);
const choices = limitChoices(spread);
const [ash] = open.content.limits!;

describe('the choice of results to limit', () => {
  it.each(['examples/demonstration.tonne', 'test/old-cases/version-1.tonne'])(
    'offers only what some route of the case has, in a unit it can have: %s',
    (path) => {
      const from = valueOf(openCase(textOfFile(path)));
      for (const { result, label, unit } of limitChoices(spreadOf(from))) {
        const limit: Limit = { id: 'new', label, result, unit, sense: 'at most', value: '1', kind: 'hard' };
        const outcome = editStructure(from, { kind: 'put limit', limit });
        expect([result, outcome.ok ? [] : outcome.problems.map(problemSentence)]).toEqual([result, []]);
        expect(limitReadings(valueOf(outcome)).filter((each) => each.limit.id === 'new').length).toBeGreaterThan(0);
      }
    },
  );
});

describe('the rows of limits', () => {
  it('have what each route comes to and the room that is left', () => {
    const [first] = limitRows(readings, numbers);

    expect(first).toMatchObject({ bound: 'at most 8\u00a0%', days: '' });
    expect(first?.cells).toMatchObject([
      { route: 'virgin', value: '0.525', kept: true, room: '7.47 left' },
      { route: 'recovered', value: '7.78', kept: true, room: '0.223 left' },
    ]);
    expect(limitedRoutes(readings).map(({ label }) => label)).toEqual(['Virgin middle ply', 'Recovered middle ply']);
  });

  it('say the last day as people of a region write it', () => {
    const permit = (style: NumberStyle) => limitRows(readings, style).find(({ limit }) => limit.id === 'landfill');

    expect(permit(numbers)?.days).toBe('until 31 Dec 2029');
    expect(permit(comma)?.days).toBe('until 31.12.2029');
    expect(permit(comma)?.bound).toBe('at most 4.000\u00a0wet t/year');
  });

  it('put what is broken first, and say by how much', () => {
    const tight = readings.map((each) =>
      each.limit.id === 'effluent'
        ? { ...each, limit: { ...each.limit, value: '5000' }, kept: each.value <= 5000 }
        : each,
    );
    const [first] = limitRows(tight, numbers);

    expect(first?.limit.id).toBe('effluent');
    expect(first?.cells[1]).toMatchObject({ kept: false, room: 'over by 401' });
  });

  it('say short by where something is too little, and nothing where nothing can be worked out', () => {
    const least = { ...readings[1]!, limit: { ...ash!, sense: 'at least' as const }, kept: false };
    const lacking = { ...readings[1]!, value: NaN, kept: false };

    expect(limitRows([least], numbers)[0]?.cells[0]?.room).toBe('short by 0.223');
    expect(limitRows([lacking], numbers)[0]?.cells[0]).toMatchObject({ value: '', room: '' });
  });

  it('leave a route blank that a limit does not watch', () => {
    const one = readings.filter(({ limit, route }) => limit.id !== 'ash' || route === 'recovered');

    expect(
      limitRows(one, numbers)
        .find(({ limit }) => limit.id === 'ash')
        ?.cells.map((cell) => cell === null),
    ).toEqual([false, true]);
  });

  it('are cells with a row for each limit in each route', () => {
    const cells = limitCells(readings, (unit) => numbers.unit(unit));

    expect(cells).toHaveLength(1 + 6);
    expect(cells[1]).toEqual([
      'Ash of the board',
      'at most',
      8,
      '%',
      'soft',
      '',
      '',
      'Demonstration: what the invented mill tells its customers',
      'Virgin middle ply',
      expect.closeTo(0.525, 3),
      'yes',
    ]);
  });
});

describe('the sentence about the largest share', () => {
  const share = (more: Partial<LargestShare>): LargestShare => ({
    route: 'recovered',
    now: 0.54,
    largest: 0.556_39,
    binding: [ash!],
    ...more,
  });
  const said = (shares: readonly LargestShare[], from = readings) =>
    shareSentences(shares, from, spread, 'en-GB').map(({ sentence, isBroken }) => [
      sentence.replaceAll('\u00a0', ' '),
      isBroken,
    ]);
  const fixed = ['Virgin middle ply has no recovered line to take more.', false];
  const begin = 'Recovered share of Recovered middle ply: 54 % now';

  it.each([
    {
      what: 'what binds, rounded down so that it is kept',
      more: {},
      sentence: `${begin}, at most 55.6 % within all limits; Ash of the board binds.`,
      isBroken: false,
    },
    {
      what: 'that it may be the whole',
      more: { largest: 1, binding: [] },
      sentence: `${begin}; all limits are kept up to 100 %.`,
      isBroken: false,
    },
    {
      what: 'that none keeps them all',
      more: { largest: null },
      sentence: `${begin}; no share keeps all limits: Ash of the board is broken even at best.`,
      isBroken: true,
    },
    {
      what: 'that it is too large now',
      more: { largest: 0.4 },
      sentence: `${begin}, but at most 40 % within all limits; Ash of the board binds.`,
      isBroken: true,
    },
    {
      what: 'all that bind',
      more: { binding: [ash!, { ...ash!, label: 'Dirt' }] },
      sentence: `${begin}, at most 55.6 % within all limits; Ash of the board and Dirt bind.`,
      isBroken: false,
    },
  ])('says $what', ({ more, sentence, isBroken }) => {
    expect(said([share(more)])).toEqual([fixed, [sentence, isBroken]]);
  });

  it('says that nothing limits it where no limit is set', () => {
    expect(said([share({ largest: 1, binding: [] })], [])[1]).toEqual([`${begin}; no limit is set for it.`, false]);
  });

  it('says that a route of recovered lines has no virgin line to give way', () => {
    expect(said([])[1]).toEqual(['Recovered middle ply has no virgin line to give way.', false]);
  });
});

describe('a limit being written', () => {
  const draft = (before: Limit | null = null, style = numbers) => new LimitDraft(before, choices, style);

  it('begins with the first result and its unit, and takes the unit of another one along', () => {
    const fresh = draft();
    expect([fresh.choice, fresh.unit, fresh.sense]).toEqual(['productAsh', '%', 'at most']);

    fresh.choose('recycled.content');
    expect([fresh.resultId, fresh.unit, fresh.sense]).toEqual(['recycled.content', '%', 'at least']);
    fresh.choose('residue.all.wet');
    expect([fresh.unit, fresh.sense]).toEqual(['wet-t/a', 'at most']);
  });

  it('gives back the limit it was made from, whatever the decimal mark', () => {
    for (const limit of open.content.limits!) {
      expect(draft(limit).read([])).toEqual(limit);
      expect(draft({ ...limit, value: '1234.5', route: 'virgin' }, comma).read([])).toEqual({
        ...limit,
        value: '1234.5',
        route: 'virgin',
      });
    }
  });

  it('shows a value that a file writes with an exponent as one would type it', () => {
    expect(draft({ ...ash!, value: '8e6' }).value).toBe('8000000');
    expect(draft({ ...ash!, value: '-2.5e-3' }, comma).read([])).toMatchObject({ value: '-0.0025' });
  });

  it('reads a value with a unit behind it, and makes an id of the name', () => {
    const fresh = draft(null, comma);
    Object.assign(fresh, { label: ' Straße & Ärger ', value: '7,5 %' });

    expect(fresh.read(['strasse-arger'])).toEqual({
      id: 'stra-e-arger',
      label: 'Straße & Ärger',
      result: 'productAsh',
      sense: 'at most',
      value: '7.5',
      unit: '%',
      kind: 'hard',
    });
  });

  it('asks which reading is meant, and goes on from the one chosen', () => {
    const fresh = draft(null, comma);
    Object.assign(fresh, { label: 'Any', value: '1.234' });

    expect(fresh.read([])).toBe('1.234 can mean 1,234 or 1234. Which one?');
    fresh.settle(fresh.readings[1]!);
    expect(fresh.read([])).toMatchObject({ value: '1234' });
  });

  it('says what is missing and keeps what was typed', () => {
    const fresh = draft();
    fresh.value = 'a lot';
    expect(fresh.read([])).toBe('A limit needs a name.');
    fresh.label = 'Any';
    expect(fresh.read([])).toBe('“a lot” is not a number.');
    expect([fresh.label, fresh.value]).toEqual(['Any', 'a lot']);
  });

  it('has its refusals said of its own fields', () => {
    const limit = { ...ash!, id: 'new', unit: 'kWh' };
    const [sentence] = problemsOf(editStructure(open, { kind: 'put limit', limit })).map(problemSentence);

    expect(refusalWords(sentence ?? '')).toMatch(/^Unit: "kWh" was given; allowed is /u);
    expect(refusalWords('Anything else.')).toBe('Anything else.');
  });
});

describe('a new id', () => {
  it.each([
    { label: 'Pulp price at 414', taken: [], id: 'pulp-price-at-414' },
    { label: 'Pulp price at 414', taken: ['pulp-price-at-414', 'pulp-price-at-414-2'], id: 'pulp-price-at-414-3' },
    { label: '<img src=x onerror=alert(1)>', taken: [], id: 'img-src-x-onerror-alert-1' },
    { label: '2030, a weak year', taken: [], id: 'a-weak-year' },
    { label: '紙', taken: [], id: 'scenario' },
    { label: 'Constructor', taken: [], id: 'scenario' },
    { label: 'x'.repeat(60), taken: ['x'.repeat(34)], id: `${'x'.repeat(34)}-2` },
  ])('of "$label" is $id', ({ label, taken, id }) => {
    expect(newId(label, 'scenario', taken)).toBe(id);
    expect(id).toMatch(/^[a-z][a-z0-9-]{0,39}$/u);
  });
});

describe('digits that a case can keep', () => {
  it.each([
    [439.895_026_436, '439.895'],
    [60_000_000, '60000000'],
    [0.000_000_123_456_7, '0.000000123457'],
    [-12.5, '-12.5'],
    [100, '100'],
    [1.2e21, '1200000000000000000000'],
  ])('are %d as %s', (value, digits) => {
    expect(plainDigits(value)).toBe(digits);
  });
});
