import { describe, expect, it } from 'vitest';
import { NumberStyle } from '../../../renderer/numbers/number-style.ts';
import { inputFigure } from '../../../renderer/screens/what-if/tornado/input-figure.ts';
import { fullName, inputName, shortWhere } from '../../../renderer/screens/what-if/tornado/input-name.ts';
import { isJudgedByPerson } from '../../../renderer/screens/what-if/tornado/judged-by-person.ts';
import { methodWords } from '../../../renderer/screens/what-if/tornado/method-words.ts';
import { restsWords } from '../../../renderer/screens/what-if/tornado/rests-words.ts';
import { planTerms } from '../../../renderer/screens/what-if/tornado/plan-terms.ts';
import { resultWords } from '../../../renderer/screens/what-if/tornado/result-words.ts';
import { shownSensitivity } from '../../../renderer/screens/what-if/tornado/shown-sensitivity.ts';
import { swingCells } from '../../../renderer/screens/what-if/tornado/swing-cells.ts';
import { swingNote } from '../../../renderer/screens/what-if/tornado/swing-note.ts';
import { winningSide } from '../../../renderer/screens/what-if/tornado/winning-side.ts';
import { verdictOf } from '../../../renderer/screens/what-if/tornado/verdict.ts';
import { planText } from '../outlay/plan-case.ts';
import { demonstrationSpread } from '../open-demonstration.ts';
import { sensitivityOf, swing } from './swings.ts';

const spread = demonstrationSpread();
const alike = { ...spread, base: spread.with };
const turning = (label: string) => swing(label, 40, -160, { label, where: 'Virgin middle ply, machine' });

describe('names of inputs', () => {
  it('tells the inputs of the two routes apart by the kind of the route', () => {
    expect(shortWhere('Recovered middle ply, machine', spread)).toBe('recovered, machine');
    expect(shortWhere('Virgin middle ply', spread)).toBe('virgin');
    expect(shortWhere('Mixed papers and boards', spread)).toBe('Mixed papers and boards');
  });

  it('keeps the names of the routes where both are of one kind', () => {
    expect(shortWhere('Recovered middle ply, machine', alike)).toBe('Recovered middle ply, machine');
  });

  it('names the place in brackets, and all of it in a title', () => {
    const input = { label: 'Dryness after the press', where: 'Virgin middle ply, machine' };
    expect(inputName(input, spread)).toBe('Dryness after the press (virgin, machine)');
    expect(fullName(input)).toBe('Dryness after the press, Virgin middle ply, machine');
  });
});

describe('the verdict', () => {
  it('names the largest that could turn the answer', () => {
    expect(verdictOf(sensitivityOf([turning('Heat'), swing('b', -80, -40)]), spread, 'en')).toBe(
      '1 input could turn the answer alone: heat (virgin, machine).',
    );
  });

  it('names three of many, and says that there are more', () => {
    const judged = ['A price', 'B price', 'C price', 'D price'].map(turning);
    expect(verdictOf(sensitivityOf(judged), spread, 'en')).toBe(
      '4 inputs could turn the answer alone: A price (virgin, machine), B price (virgin, machine), C price (virgin, machine), and more.',
    );
  });

  it('keeps those without a known range out', () => {
    const service = swing('service', 100, -200, { convention: true });
    expect(verdictOf(sensitivityOf([swing('b', -80, -40)], [service]), spread, 'en')).toBe(
      'No input could turn the answer alone within its usual range.',
    );
  });

  it('says by how much all were moved, in the way of the locale', () => {
    const moved = { ...sensitivityOf([]), method: 'share either way', share: 0.125 } as const;
    expect(verdictOf(moved, spread, 'de')).toBe('No input could turn the answer alone when moved by 12,5\u00a0%.');
    expect(methodWords(moved, 'de')).toBe('one at a time, each ±12,5\u00a0%');
  });

  it('judges nothing where the answer itself is lacking', () => {
    expect(verdictOf({ ...sensitivityOf([]), base: Number.NaN }, spread, 'en')).toBe(
      'The answer itself cannot be worked out yet.',
    );
  });
});

describe('what the swings rest on', () => {
  it('is told in whole per cent that add up to a hundred', () => {
    // 0.5, 33 and 66.5 round down to 0, 33 and 66: the missing one goes to the first of the two that lost a half.
    expect(restsWords(sensitivityOf([]))).toBe(
      'It rests on: measured 1\u00a0%, sourced 33\u00a0%, rule of thumb 66\u00a0% of all swings.',
    );
  });

  it('says nothing where nothing swings', () => {
    expect(restsWords({ rests: { measured: 0, sourced: 0, 'rule of thumb': 0 } })).toBe('');
  });
});

describe('the table of swings', () => {
  it('holds figures as numbers, and every swing that is on the picture or not', () => {
    const cells = swingCells(
      sensitivityOf([swing('price', 20.123, -140)], [swing('service', -70, -50, { convention: true })]),
      '€/t',
      2,
      (unit) => unit,
    );
    expect(cells[0]?.slice(5, 8)).toEqual(['result at low, €/t', 'result at high, €/t', 'swing, €/t']);
    expect(cells[1]).toEqual(['price', '%', 20, 10, 30, 20.12, -140, 160.12, -8.006, '', 'could turn the answer']);
    expect(cells[2]?.at(-1)).toBe('no usual range is known');
  });

  it('notes what a bar cannot say', () => {
    const odd = swing('inflation', -70, Number.NaN, { sameWay: true, figure: 0, flips: false });
    expect(swingNote(odd, true)).toBe(
      'both ends move it one way; cannot be at its high end; today lies outside the range',
    );
  });
});

describe('figures and words beside them', () => {
  it('writes figures of inputs whole from a thousand on, else to four digits', () => {
    expect(inputFigure(36_800_000.4, 'en')).toBe('36,800,000');
    expect(inputFigure(435.96, 'en')).toBe('436');
    expect(inputFigure(0.0655, 'de')).toBe('0,0655');
  });

  it('says in words who wins, for money and for carbon', () => {
    const numbers = new NumberStyle('en', 'EUR');
    expect(resultWords('difference.total', spread, numbers)).toMatchObject({
      unit: '€/t',
      withWins: 'recovered cheaper',
      baseWins: 'virgin cheaper',
    });
    expect(resultWords('difference.footprint.total', spread, numbers).withWins).toBe('recovered emits less');
  });

  it('says of a present value what the plan does, in millions of the currency of the case', () => {
    expect(resultWords('investment.npv', spread, new NumberStyle('en', 'EUR'))).toMatchObject({
      kind: 'present value',
      unit: '€ million',
      scale: 1e6,
      sign: false,
      withWins: 'the plan pays',
      baseWins: 'the plan loses',
      neither: 'the plan pays nothing',
    });
    expect(resultWords('investment.npv', spread, new NumberStyle('en', 'SEK')).unit).toBe('kr million');
  });

  it('lets the route compared win below nothing by a difference, and above by a present value', () => {
    const wins = (result: string) =>
      [-1, 0, 1, Number.NaN].map((value) =>
        winningSide(value, resultWords(result, spread, new NumberStyle('en', 'EUR')).winsBelow),
      );

    expect(wins('difference.total')).toEqual(['with', null, 'base', null]);
    expect(wins('difference.footprint.total')).toEqual(['with', null, 'base', null]);
    expect(wins('investment.npv')).toEqual(['base', null, 'with', null]);
  });

  it('names beside a present value its money, its prices and that it stands before financing', () => {
    const nominal = planText.replace('"money": "real"', '"money": "nominal"');
    const year = { priceYear: '2024' };

    expect(planTerms('investment.npv', planText, year)).toBe('real, prices of 2024, before financing');
    expect(planTerms('investment.npv', nominal, year)).toBe('nominal, from prices of 2024, before financing');
    expect(planTerms('difference.total', planText, year)).toBe('');
    expect(planTerms('investment.npv', '{}', year)).toBe('before financing');
  });

  it('shows swings of money in millions, and the figures of the inputs as they are', () => {
    const money = sensitivityOf([swing('price', 20e6, -140e6)], [swing('service', -70e6, -50e6, { convention: true })]);
    const shown = shownSensitivity(money, { scale: 1e6 });

    // From -140 to 20 over an input that goes from 10 to 30: 160 in all, -8 for each of its units.
    expect(shown.judged[0]).toMatchObject({ low: 10, high: 30, atLow: 20, atHigh: -140, swing: 160, slope: -8 });
    expect(shown.conventional[0]).toMatchObject({ atLow: -70, atHigh: -50 });
    expect(shown.base).toBe(money.base / 1e6);
  });

  it('knows a range that a person set from the one the program has', () => {
    const [input] = Object.values(spread.inputs).filter(({ low, high }) => low === '6' && high === '10');
    expect(isJudgedByPerson(swing('m', 0, 1, { low: 6, high: 10 }), 'usual range', input)).toBe(false);
    expect(isJudgedByPerson(swing('m', 0, 1, { low: 5, high: 10 }), 'usual range', input)).toBe(true);
    expect(isJudgedByPerson(swing('m', 0, 1, { low: 5, high: 10 }), 'share either way', input)).toBe(false);
  });
});
