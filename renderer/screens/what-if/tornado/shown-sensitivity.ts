import type { Sensitivity, Swing } from '../../../../src/index.ts';
import type { ResultWords } from './result-words.ts';

/** Swings in the unit they are shown in; figures of the inputs stay as they are. */
export function shownSensitivity(sensitivity: Sensitivity, { scale }: Pick<ResultWords, 'scale'>): Sensitivity {
  const shown = (swing: Swing): Swing => ({
    ...swing,
    atLow: swing.atLow / scale,
    atHigh: swing.atHigh / scale,
    swing: swing.swing / scale,
    slope: swing.slope / scale,
  });
  return {
    ...sensitivity,
    base: sensitivity.base / scale,
    judged: sensitivity.judged.map(shown),
    conventional: sensitivity.conventional.map(shown),
  };
}
