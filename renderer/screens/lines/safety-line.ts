import type { InputView } from '../../../src/index.ts';

const deference = 'Local codes and licensed practice decide.';
const pulpers = ['slushing pulper', 'vat pulper', 'drum pulper', 'broke pulper', 'detrashing'];

/** One quiet line where work at a stage can hurt; "" elsewhere. */
export function safetyLine(kind: string, inputs: readonly InputView[]): string {
  const doses = (chemical: string): boolean =>
    inputs.some(({ id, value }) => id.endsWith(`.dose.${chemical}`) && Number(value) > 0);
  const lines = [
    ...(pulpers.includes(kind)
      ? ['Pulpers are confined spaces with moving parts: isolate and test before entry.']
      : []),
    ...(kind === 'bleaching tower' || kind === 'pumps' || kind === 'thickener'
      ? ['Towers and chests are confined spaces: gas can gather above old stock.']
      : []),
    ...(doses('caustic') ? ['Caustic soda burns skin and eyes.'] : []),
    ...(doses('peroxide') ? ['Peroxide feeds fire and bursts closed pipes where it breaks down.'] : []),
    ...(doses('dithionite') ? ['Dithionite heats and gives off gas when it gets damp.'] : []),
  ];
  return lines.length === 0 ? '' : `${lines.join(' ')} ${deference}`;
}
