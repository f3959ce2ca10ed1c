import { describe, expect, it } from 'vitest';
import { EngineDesk } from '../../../renderer/engine/engine-desk.ts';
import { rangeEndView, withEnd } from '../../../renderer/screens/outlay/estimate-range.ts';
import { estimateId } from '../../../src/index.ts';
import { planCase, planText } from './plan-case.ts';

describe('the range of the capital', () => {
  const { spread, answer } = planCase();
  const input = spread.inputs[estimateId];

  it('is that of the class, class 4 in the example', () => {
    expect(answer.results.estimate).toEqual({ class: '4', low: 70, high: 150, isOwn: false });
    if (input === undefined) throw new Error('The capital has no input.');
    const range = { low: '70', high: '150' };
    expect(rangeEndView(input, 'high', range, false)).toMatchObject({ value: '150', touched: false, unit: '%' });
    expect(rangeEndView(input, 'low', null, false).value).toBe('');
  });

  it('keeps the other end, or begins at the figure itself', () => {
    expect(withEnd('80 %', 'low', { low: '70', high: '150' }, '100')).toEqual({ low: '80', high: '150' });
    expect(withEnd('130', 'high', null, '100')).toEqual({ low: '100', high: '130' });
  });

  it('is taken by the engine, and refused where its ends are the wrong way round', () => {
    const desk = new EngineDesk();
    desk.answer('open', { text: planText });
    const put = (low: string, high: string) =>
      desk.answer('structure', { edit: { kind: 'set range', input: estimateId, range: { low, high } } });
    expect(put('160', '150').kind).toBe('refused');
    expect(put('80', '150').kind).toBe('case');
    expect(desk.answer('plan', {})?.results.estimate).toMatchObject({ low: 80, high: 150, isOwn: true });
  });
});
