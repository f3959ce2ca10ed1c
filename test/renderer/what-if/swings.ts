import type { Sensitivity, Swing } from '../../../src/index.ts';

/** An input of a difference of -60 that moves it to `atLow` and `atHigh`; what is not said follows from that. */
export function swing(id: string, atLow: number, atHigh: number, more: Partial<Swing> = {}): Swing {
  const reached = [atLow, atHigh, base].filter(Number.isFinite);
  return {
    id,
    label: id,
    where: '',
    unit: '%',
    low: 10,
    high: 30,
    convention: false,
    isKnown: true,
    figure: 20,
    atLow,
    atHigh,
    swing: Math.max(...reached) - Math.min(...reached),
    slope: (atHigh - atLow) / 20,
    elasticity: null,
    sameWay: false,
    flips: Math.max(...reached) > 0,
    restsOn: 'sourced',
    ...more,
  };
}

const base = -60;

export function sensitivityOf(judged: readonly Swing[], conventional: readonly Swing[] = []): Sensitivity {
  return {
    result: 'difference.total',
    base,
    method: 'usual range',
    share: 0.2,
    judged,
    conventional,
    rests: { measured: 0.005, sourced: 0.33, 'rule of thumb': 0.665 },
  };
}
