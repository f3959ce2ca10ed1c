import { spreadOf } from '../index.ts';
import { type Console, WrongUse } from './console.ts';
import { type SetOptions, openWithSets } from './open-with-sets.ts';
import { wholeOption } from './whole-option.ts';
import { usualTrials, workbookBytes } from './workbook-bytes.ts';
import { writeWhole } from './write-whole.ts';

export interface WorkbookOptions extends SetOptions {
  readonly out: string;
  readonly trials?: string;
}

/** Writes a case as a workbook. What cannot be worked out stands in it as an error, and is told here as well. */
export async function writeWorkbook(console: Console, file: string, options: WorkbookOptions): Promise<void> {
  if (!/\.xlsx$/iu.test(options.out))
    throw new WrongUse(`--out takes a file that ends in .xlsx; "${options.out}" was given.`);
  const { trials = usualTrials } = wholeOption('trials', options.trials, 0, 1_000_000);
  const open = openWithSets(file, options);
  writeWhole(options.out, await workbookBytes(open, console.today, trials));
  console.say(`Written: ${options.out}\n`);
  for (const gap of spreadOf(open).warnings.filter(({ id }) => /^(no figure|cannot be worked out) /u.test(id)))
    console.say(`In it as #N/A: ${gap.sentence}\n`);
}
