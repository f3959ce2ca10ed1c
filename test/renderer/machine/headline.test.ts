import { describe, expect, it } from 'vitest';
import { headline, turningSentence } from '../../../renderer/screens/machine/headline.ts';
import { NumberStyle } from '../../../renderer/numbers/number-style.ts';
import type { MachineEffect, Spread } from '../../../src/index.ts';

const numbers = new NumberStyle('en', 'EUR');

/** Millions a year: what costs alone come to, what the machine adds, and what is left; recovered less virgin. */
function told(alone: string, back: string, left: string, more: Partial<MachineEffect> = {}, perTonne = left): string {
  const step = (shown: string) => ({ shown });
  const steps = { costsAlone: step(alone), takenBack: step(back), left: step(left) };
  const effect = {
    inForce: 'soldOut',
    isEntered: true,
    isPriced: true,
    soldOut: steps,
    ...more,
  } as unknown as MachineEffect;
  return headline(spreadWith(perTonne), effect, numbers);
}

function spreadWith(perTonne: string): Spread {
  return {
    base: { id: 'virgin', label: 'Virgin middle ply', kind: 'virgin' },
    with: { id: 'recovered', label: 'Recovered middle ply', kind: 'recovered' },
    difference: { shownPerTonne: perTonne },
  } as unknown as Spread;
}

describe('the sentence of the machine effect', () => {
  it.each([
    [
      '-6.71',
      '2.26',
      '-4.45',
      'The machine takes back €2.26 million of the €6.71 million; recovered still costs less by €4.45 a tonne.',
    ],
    [
      '-2.00',
      '2.50',
      '0.50',
      'The machine turns the answer: it takes back €2.50 million where recovered saves €2.00 million, and virgin costs less by €0.50 a tonne.',
    ],
    [
      '-2.00',
      '-0.50',
      '-2.50',
      'The machine adds €0.50 million to the €2.00 million that recovered saves; recovered costs less by €2.50 a tonne.',
    ],
    [
      '2.00',
      '0.50',
      '2.50',
      'The machine adds €0.50 million to the €2.00 million that recovered costs more; virgin costs less by €2.50 a tonne.',
    ],
    [
      '2.00',
      '-0.50',
      '1.50',
      'The machine gives back €0.50 million of the €2.00 million that recovered costs more; virgin still costs less by €1.50 a tonne.',
    ],
    [
      '2.00',
      '-2.50',
      '-0.50',
      'The machine turns the answer: it gives back €2.50 million where recovered costs €2.00 million more, and recovered costs less by €0.50 a tonne.',
    ],
    ['-2.00', '0.00', '-2.00', 'The machine takes nothing back; recovered costs less by €2.00 a tonne.'],
    [
      '0.00',
      '0.50',
      '0.50',
      'Costs alone are the same; with the machine virgin costs less by €0.50 a tonne, €0.50 million a year.',
    ],
    [
      '-2.00',
      '2.00',
      '0.00',
      'The machine turns the answer: it takes back €2.00 million where recovered saves €2.00 million, and the two routes then cost the same.',
    ],
  ])('says %s and %s come to %s', (alone, back, left, sentence) => {
    expect(told(alone, back, left)).toBe(sentence);
  });

  it('says that nothing was entered', () => {
    expect(told('-2.00', '0.00', '-2.00', { isEntered: false })).toBe(
      'No machine effect is entered: both furnishes are taken to run alike, and recovered costs less by €2.00 a tonne.',
    );
  });

  it('asks for the price where a machine that is sold out has none', () => {
    expect(told('-2.00', '', '', { isPriced: false })).toContain('give the price of the product');
    expect(told('-2.00', '', '')).toContain('see what to look at');
  });
});

describe('the speed at which the answer turns', () => {
  const turns = (crossings: readonly number[]) =>
    ({ figure: 98.5, from: 0, to: 200, crossings }) as unknown as Parameters<typeof turningSentence>[2];
  const effect = (more: Partial<MachineEffect>) => more as unknown as MachineEffect;
  const priced = effect({ inForce: 'soldOut', isPriced: true });

  // 85.892 / 98.5 = 0.872.
  it('is told against the speed there is', () => {
    expect(turningSentence(spreadWith('-37.08'), priced, turns([85.892]), numbers)).toBe(
      'Recovered loses if the machine runs 12.8\u00a0% slower.',
    );
    expect(turningSentence(spreadWith('12.00'), priced, turns([108.35]), numbers)).toBe(
      'Recovered wins if the machine runs 10.0\u00a0% faster.',
    );
  });

  it('is said not to be there, or left out where there is no answer', () => {
    expect(turningSentence(spreadWith('-37.08'), priced, turns([]), numbers)).toBe(
      'No speed from 0 to 200\u00a0% turns the answer.',
    );
    expect(turningSentence(spreadWith(''), priced, turns([85.892]), numbers)).toBe('');
    expect(turningSentence(spreadWith('-37.08'), priced, null, numbers)).toBe('');
  });

  it('is not told while nothing says what a tonne or an hour is worth', () => {
    const free = effect({ inForce: 'ordersLimited', figures: { 'recovered.machineEffect.costPerHour': 0 } });

    expect(
      turningSentence(spreadWith('-37.08'), effect({ inForce: 'soldOut', isPriced: false }), turns([]), numbers),
    ).toBe('');
    expect(turningSentence(spreadWith('-37.08'), free, turns([]), numbers)).toBe('');
  });
});
