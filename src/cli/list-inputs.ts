import { spreadOf, unitLabel } from '../index.ts';
import { textTable } from '../report/text-table.ts';
import type { Console } from './console.ts';
import { type SetOptions, openWithSets } from './open-with-sets.ts';

export interface InputsOptions extends SetOptions {
  readonly json?: boolean;
}

/** Lists every input of a case. */
export function listInputs(console: Console, file: string, options: InputsOptions): void {
  const inputs = Object.values(spreadOf(openWithSets(file, options)).inputs);
  if (options.json === true) {
    console.say(`${JSON.stringify(inputs, null, 2)}\n`);
    return;
  }
  const columns = (['id', 'value', 'unit', 'low', 'high', 'set', 'status', 'label', 'source'] as const).map((head) => ({
    head,
    holds: head === 'value' || head === 'low' || head === 'high' ? ('figures' as const) : ('words' as const),
  }));
  const rows = inputs.map((input) => [
    input.id,
    input.value,
    unitLabel(input.unit),
    input.low ?? '',
    input.high ?? '',
    input.touched ? 'touched' : 'default',
    input.status,
    input.where === '' ? input.label : `${input.label} (${input.where})`,
    input.source,
  ]);
  console.say(
    `${textTable(columns, rows)}\n\n${String(inputs.length)} inputs, ${String(inputs.filter((input) => input.touched).length)} of them touched.\n`,
  );
}
