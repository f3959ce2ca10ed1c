import planText from '../../../examples/plan.tonne?raw';
import { EngineDesk } from '../../../renderer/engine/engine-desk.ts';
import type { PlanAnswer } from '../../../renderer/engine/messages.ts';
import type { PlanResults, Spread } from '../../../src/index.ts';

export { planText };

/** The example with a plan, as the engine's desk hands it over. */
export function planCase(text: string = planText): { readonly spread: Spread; readonly answer: PlanAnswer } {
  const desk = new EngineDesk();
  const opened = desk.answer('open', { text });
  const answer = desk.answer('plan', {});
  if (opened.kind === 'refused' || answer === null) throw new Error('The example has no plan.');
  return { spread: opened.state.spread, answer };
}

/** Results that are made up: flows a year in money, and what follows from them without interest. */
export function madeUp(flows: readonly number[], change: Partial<PlanResults> = {}): PlanResults {
  let sum = 0;
  const cumulative = flows.map((flow) => (sum += flow));
  const calendar = flows.map((_, year) => String(2030 + year));
  return {
    priceYear: '2030',
    plan: {
      start: '2030',
      years: flows.length - 1,
      from: 'virgin',
      to: 'recovered',
      operatesFrom: 1,
      money: 'real',
      items: [{ id: 'line', label: 'Line' }],
      depreciation: 'straight line',
      losses: 'carried forward',
    },
    base: { id: 'virgin', label: 'Virgin' },
    project: { id: 'recovered', label: 'Recovered' },
    sameProduct: { base: 'virgin', with: 'recovered', questions: [], open: 5, stand: 'not confirmed' },
    calendar,
    rows: [],
    estimate: null,
    typedSavings: { instead: [], beside: [] },
    residues: { outlets: [], destinations: [], shares: [] },
    groups: [{ id: 'pulp', label: 'Pulp' }],
    flows,
    cumulative,
    discounted: cumulative,
    rates: { nominal: 0.08, inflation: 0.02, real: 0.0588235, used: 0.0588235 },
    outlay: 0,
    npv: sum,
    internal: { rates: [], always: false },
    modified: null,
    payback: null,
    discountedPayback: null,
    index: null,
    levelised: { cost: 0, saving: 0 },
    breakEvens: { tonnes: null, fibre: [] },
    ...change,
  };
}
