import type { InputView, StageBalance } from '../../../src/index.ts';
import type { MissingFigure } from '../../fields/blank-input.ts';

/** What can be given for components that have no figure: a share that leaves, a quotient, a passage with the water. */
export function missingFigures(stage: StageBalance, inputs: readonly InputView[]): readonly MissingFigure[] {
  const present = new Set(inputs.map(({ id }) => id));
  const isWasher = present.has(`${stage.id}.consistencyOut`);
  const isCascade = stage.levels.length > 0;
  const missing = stage.accepts.flatMap(({ component, label }): MissingFigure[] => {
    if (isWasher) return [{ id: `${stage.id}.passage.${component}`, label: `${label} that passes`, unit: '%' }];
    if (!isCascade) return [{ id: `${stage.id}.removal.${component}`, label: `${label} removed`, unit: '%' }];
    // The fibre parts by the reject rate, which is there already.
    if (component === 'fibre') return [];
    // A component parts by one figure only: where somebody wrote one, a second would contradict it.
    const laws = ['quotient', 'exponent', 'efficiency'].map((law) => `${stage.id}.${law}.${component}`);
    if (inputs.some(({ id, touched }) => touched && laws.includes(id))) return [];
    const byLaw = present.has(`${stage.id}.exponent.${component}`)
      ? []
      : [{ id: `${stage.id}.quotient.${component}`, label: `${label}: separation quotient`, unit: '1' }];
    const rate = { id: `${stage.id}.efficiency.${component}`, label: `${label}: rejected by each stage`, unit: '%' };
    return [...byLaw, rate];
  });
  const heat =
    present.has(`${stage.id}.heatTo`) || isCascade ? [] : [{ id: `${stage.id}.heat`, label: 'Heat', unit: 'GJ/bdt' }];
  return [...missing, ...heat].filter(({ id }) => !present.has(id));
}
