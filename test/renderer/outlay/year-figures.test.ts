import { describe, expect, it } from 'vitest';
import { EngineDesk } from '../../../renderer/engine/engine-desk.ts';
import { planFigureView } from '../../../renderer/screens/outlay/plan-figure.ts';
import { countGiven, writtenOffTotal, yearFigures } from '../../../renderer/screens/outlay/year-figures.ts';
import { planCase, planText } from './plan-case.ts';

const { spread, answer } = planCase();
const { results } = answer;

describe('values of single years', () => {
  it('are offered only where the engine takes them, in the first year and in the last', () => {
    const table = { ...results, plan: { ...results.plan, depreciation: 'table' as const } };
    const desk = new EngineDesk();
    desk.answer('open', { text: planText });
    desk.answer('structure', { edit: { kind: 'set investment', plan: table.plan } });
    for (const { figures } of yearFigures(table, 'EUR')) {
      const offered = figures.filter((figure) => figure !== null);
      for (const figure of [offered[0], offered.at(-1)]) {
        const taken = desk.answer('change', { id: figure?.id ?? '', typed: '50' });
        expect(taken.kind, figure?.id ?? 'a row without any year').toBe('case');
      }
    }
  });

  it('offer a share of residues where one is given or asked for, in years in which the engine takes it', () => {
    const desk = new EngineDesk();
    desk.answer('open', { text: planText });
    const stem = 'residue.fine.to.boiler';
    const closing = {
      ...results.plan,
      outlets: [
        { destination: 'incineration', first: 0, last: 9 },
        { destination: 'boiler', first: 3, last: 15 },
      ],
    };
    desk.answer('structure', { edit: { kind: 'set investment', plan: closing } });
    const planned = desk.answer('plan', {});
    if (planned === null) throw new Error('There is no plan.');
    expect(yearFigures(planned.results, 'EUR').map(({ id }) => id)).not.toContain(stem);

    const row = yearFigures(planned.results, 'EUR', [stem]).find(({ id }) => id === stem);
    expect(row?.figures.map((figure) => figure !== null)).toEqual(results.calendar.map((_, year) => year >= 3));
    for (const year of [3, 15])
      expect(desk.answer('change', { id: row?.figures[year]?.id ?? '', typed: '40' }).kind).toBe('case');
    expect(desk.answer('change', { id: `investment.${stem}.2`, typed: '40' }).kind).toBe('refused');

    const given = desk.answer('plan', {});
    if (given === null) throw new Error('There is no plan.');
    expect(yearFigures(given.results, 'EUR').map(({ id }) => id)).toContain(stem);
  });

  it('carry the ramp on from the fourth year of operation', () => {
    const ramp = yearFigures(results, 'EUR').find(({ id }) => id === 'ramp');
    expect(ramp?.figures.map((figure) => figure?.id ?? null).slice(4, 7)).toEqual([
      null,
      'investment.ramp.4',
      'investment.ramp.5',
    ]);
  });

  it('name growth only of groups that the engine takes', () => {
    const desk = new EngineDesk();
    desk.answer('open', { text: planText });
    for (const { id } of results.groups)
      expect(desk.answer('change', { id: `investment.growth.${id}`, typed: '1' }).kind, id).toBe('case');
  });

  it('begin for prices in the year after today, and for writing off with operation', () => {
    const table = { ...results, plan: { ...results.plan, depreciation: 'table' as const } };
    const rows = yearFigures(table, 'EUR');
    const firstOf = (id: string) => rows.find((row) => row.id === id)?.figures.findIndex((figure) => figure !== null);
    expect(firstOf('year.pulp')).toBe(1);
    expect(firstOf('writtenOff')).toBe(2);
    expect(firstOf('taxRate')).toBe(0);
  });

  it('have no table of writing off where the plan is written off evenly', () => {
    expect(yearFigures(results, 'EUR').map(({ id }) => id)).not.toContain('writtenOff');
    expect(writtenOffTotal(results.plan, spread.inputs)).toBeNull();
  });

  it('are counted without replacements, which have places of their own', () => {
    const rows = yearFigures(results, 'EUR');
    expect(countGiven(rows, spread.inputs)).toBe(0);
    const tax = planFigureView(spread.inputs, { id: 'investment.taxRate.3', label: '', unit: '%', isMoney: false });
    expect(countGiven(rows, { ...spread.inputs, [tax.id]: tax })).toBe(1);
  });
});

describe('a figure of the plan in its slot', () => {
  it('is blank until somebody gives it', () => {
    const view = planFigureView(spread.inputs, {
      id: 'investment.item.yard.1',
      label: 'Yard',
      unit: 'EUR',
      isMoney: true,
    });
    expect(view).toMatchObject({ value: '', touched: false, unit: 'EUR' });
  });

  it('is money in millions', () => {
    const view = planFigureView(spread.inputs, {
      id: 'investment.item.yard.0',
      label: 'Yard',
      unit: 'EUR',
      isMoney: true,
    });
    expect(view).toMatchObject({ value: '6.40', touched: true });
  });

  it('is not doubted for lying outside a usual range that is a single point', () => {
    const given = planFigureView(spread.inputs, {
      id: 'investment.disposal',
      label: 'Value at the end',
      unit: 'EUR',
      isMoney: true,
    });
    expect(given).toMatchObject({ value: '1.00', low: null, high: null });
  });
});
