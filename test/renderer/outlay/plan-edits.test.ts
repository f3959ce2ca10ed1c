import { describe, expect, it } from 'vitest';
import { EngineDesk } from '../../../renderer/engine/engine-desk.ts';
import { buildingYears } from '../../../renderer/screens/outlay/building-years.ts';
import {
  operationYears,
  startYears,
  withEstimateClass,
  withItem,
  withItemNamed,
  withOutletYears,
  withoutItem,
  withoutSupport,
  withSupport,
  withSupportChanged,
  withYears,
} from '../../../renderer/screens/outlay/plan-edits.ts';
import { withDepreciation, withLosses } from '../../../renderer/screens/outlay/plan-rules.ts';
import type { InvestmentPlan } from '../../../src/index.ts';
import { planCase, planText } from './plan-case.ts';

const { spread, answer } = planCase();
const { plan } = answer.results;

/** The case with another plan, as the engine takes it. */
function taken(changed: InvestmentPlan | null): { readonly desk: EngineDesk; readonly ids: readonly string[] } {
  const desk = new EngineDesk();
  desk.answer('open', { text: planText });
  const made = desk.answer('structure', { edit: { kind: 'set investment', plan: changed } });
  if (made.kind === 'refused') throw new Error(made.sentences.join(' '));
  return { desk, ids: Object.keys(made.state.spread.inputs) };
}

describe('items of a plan', () => {
  it('can be added, each with a name of its own', () => {
    const twice = withItem(withItem(plan, 'New item'), 'New item');
    expect(twice.items.slice(-2)).toEqual([
      { id: 'new-item', label: 'New item' },
      { id: 'new-item-2', label: 'New item' },
    ]);
    expect(taken(twice).desk.answer('plan', {})?.results.plan.items).toHaveLength(7);
  });

  it('can be renamed, but not to nothing', () => {
    expect(withItemNamed(plan, 'yard', '  Yard ').items[1]?.label).toBe('Yard');
    expect(withItemNamed(plan, 'yard', '  ').items[1]?.label).toBe('Bale yard and building');
  });

  it('take their figures with them', () => {
    const { ids } = taken(withoutItem(plan, 'yard'));
    expect(ids).not.toContain('investment.item.yard.0');
    expect(ids).toContain('investment.item.pulping.0');
  });
});

describe('money from others', () => {
  it('begins as a grant in year 0, or as a credit over all years of operation', () => {
    const both = withSupport(withSupport(plan, 'grant', 'Grant'), 'credit', 'Credit');
    expect(both.supports?.slice(-2)).toEqual([
      { id: 'grant-2', label: 'Grant', kind: 'grant', first: 0, last: 0 },
      { id: 'credit', label: 'Credit', kind: 'credit', first: 2, last: 15 },
    ]);
    expect(taken(both).ids).toContain('investment.support.credit');
  });

  it('never ends before it begins', () => {
    expect(withSupportChanged(plan, 'grant', { first: 3 }).supports?.[0]).toMatchObject({ first: 3, last: 3 });
    expect(withSupportChanged(plan, 'grant', { last: 0 }).supports?.[0]).toMatchObject({ first: 0, last: 0 });
  });

  it('leaves no empty list behind', () => {
    expect(withoutSupport(plan, 'grant')).not.toHaveProperty('supports');
  });
});

describe('the years of a plan', () => {
  it('keep within a plan that is shortened', () => {
    const long = withSupport(plan, 'credit', 'Credit');
    const short = withYears(long, 1);
    expect(short).toMatchObject({ years: 1, operatesFrom: 1 });
    expect(short.supports?.map(({ first, last }) => [first, last])).toEqual([
      [1, 1],
      [1, 1],
    ]);
    expect(taken(short).desk.answer('plan', {})?.results.flows).toHaveLength(2);
  });

  it('can be thirty', () => {
    expect(taken(withYears(plan, 30)).desk.answer('plan', {})?.results.flows).toHaveLength(31);
  });

  it('offer start-up within the first ten, and not after the end', () => {
    expect(operationYears(plan)).toHaveLength(11);
    expect(operationYears({ ...plan, years: 3 })).toEqual([0, 1, 2, 3]);
  });

  it('offer the year the plan has, even where it lies far off', () => {
    expect(startYears({ ...plan, start: '2080' }, '2024')).toContain(2080);
    expect(startYears(plan, '2024').slice(0, 2)).toEqual([2019, 2020]);
  });
});

describe('choices of a plan', () => {
  it('take the class of the estimate, and take it back', () => {
    expect(withEstimateClass(plan, '2').estimateClass).toBe('2');
    expect(withEstimateClass(plan, '')).not.toHaveProperty('estimateClass');
  });

  it('leave the plan as it is where the answer is none of those offered', () => {
    expect(withDepreciation(plan, 'table').depreciation).toBe('table');
    expect(withDepreciation(plan, 'sideways')).toBe(plan);
    expect(withLosses(plan, 'at once').losses).toBe('at once');
    expect(withLosses(plan, 'never')).toBe(plan);
  });

  it('give the plan up with all its figures', () => {
    const { desk, ids } = taken(null);
    expect(desk.answer('plan', {})).toBeNull();
    expect(ids.filter((id) => id.startsWith('investment.'))).toEqual([]);
  });
});

describe('the years in which an item can be paid for', () => {
  it('are those up to start-up', () => {
    expect(buildingYears(plan, spread.inputs)).toEqual([0, 1, 2]);
  });

  it('are two at least', () => {
    expect(buildingYears({ ...plan, operatesFrom: 0, items: [] }, {})).toEqual([0, 1]);
  });

  it('reach to the last year that has a figure', () => {
    const yard = spread.inputs['investment.item.yard.0'];
    if (yard === undefined) throw new Error('The yard has no figure.');
    expect(buildingYears(plan, { ...spread.inputs, 'investment.item.yard.5': yard })).toEqual([0, 1, 2, 3, 4, 5]);
  });
});

describe('the years of an outlet of residues', () => {
  it('stand in the plan only where they are not all of them', () => {
    const closing = withOutletYears(plan, 'landfill', { last: 6 });
    expect(closing.outlets).toEqual([{ destination: 'landfill', first: 0, last: 6 }]);
    expect(withOutletYears(closing, 'landfill', { last: plan.years }).outlets).toBeUndefined();
  });

  it('never end before they begin: whichever is moved past the other takes it along', () => {
    const late = withOutletYears(withOutletYears(plan, 'landfill', { last: 6 }), 'landfill', { first: 8 });
    expect(late.outlets).toEqual([{ destination: 'landfill', first: 8, last: 8 }]);
    expect(withOutletYears(late, 'landfill', { last: 3 }).outlets).toEqual([
      { destination: 'landfill', first: 3, last: 3 },
    ]);
  });

  it('follow a plan of another length: what lasted to its end still does', () => {
    const opening = withOutletYears(plan, 'scrap', { first: 4 });
    expect(withYears(opening, 20).outlets).toEqual([{ destination: 'scrap', first: 4, last: 20 }]);
    expect(withYears(withOutletYears(plan, 'landfill', { last: 6 }), 5).outlets).toBeUndefined();
  });

  it('are taken by the engine', () => {
    const { ids } = taken(withOutletYears(plan, 'landfill', { last: 6 }));
    expect(ids).toContain('residue.junk.to.incineration');
  });
});
