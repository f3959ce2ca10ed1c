import { spreadOf, unitLabel } from '../index.ts';
import { textTable } from '../report/text-table.ts';
import type { FurtherFigure } from '../paper/sheet.ts';
import { furtherFigures } from '../study/further-figures.ts';
import type { Console } from './console.ts';
import { type SetOptions, openWithSets } from './open-with-sets.ts';

export interface InputsOptions extends SetOptions {
  readonly json?: boolean;
  readonly further?: boolean;
}

/** Lists every input of a case, or the figures that it would take beside them. */
export function listInputs(console: Console, file: string, options: InputsOptions): void {
  const open = openWithSets(file, options);
  if (options.further === true) {
    listFurther(console, furtherFigures(open), options.json === true);
    return;
  }
  const inputs = Object.values(spreadOf(open).inputs);
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

/** Figures that count for nothing until they are given, by --set or in the window. */
function listFurther(console: Console, further: readonly FurtherFigure[], asJson: boolean): void {
  if (asJson) {
    console.say(`${JSON.stringify(further, null, 2)}\n`);
    return;
  }
  const columns = ['id', 'unit', 'label'].map((head) => ({ head, holds: 'words' as const }));
  const rows = further.map(({ id, unit, label, where }) => [
    id,
    unitLabel(unit),
    where === '' ? label : `${label} (${where})`,
  ]);
  console.say(`${textTable(columns, rows)}\n\n${String(further.length)} more figures can be given.\n`);
}
