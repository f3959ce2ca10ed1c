import type { InputView, Swing, TrialSummary } from '../../../../src/index.ts';
import type { KnownReach } from './law-figures.ts';
import { plainText } from './plain-figure.ts';

// Where neither a range nor trials tell how far an input goes: a fifth of its figure either way. Common practice, no source.
const share = 0.2;
// A range holds about nineteen in twenty draws of a normal law whose deviation is a quarter of it (two deviations either way, 95.4 %).
const deviationsAcross = 4;

/** How far an input goes: the range it is moved over, else its usual one, else a share of its figure; and by how much it was drawn to deviate. */
export function knownReach(
  input: InputView,
  swing: Pick<Swing, 'low' | 'high'> | undefined,
  drawn: Pick<TrialSummary['drawn'][number], 'deviation'> | undefined,
): KnownReach {
  const figure = Number(input.value);
  const reach = Math.abs(figure) * share;
  const low = swing?.low ?? Number(input.low ?? figure - reach);
  const high = swing?.high ?? Number(input.high ?? figure + reach);
  const deviation = drawn !== undefined && drawn.deviation > 0 ? drawn.deviation : (high - low) / deviationsAcross;
  return {
    figure: input.value,
    low: plainText(low),
    high: plainText(high),
    deviation: String(Number(deviation.toPrecision(3))),
  };
}
