import { type Outcome, outcome } from '../case/problem.ts';
import { writeCase } from '../case/write-case.ts';
import { type NewCase, newCase } from '../paper/new-case.ts';
import { templateEntries } from '../paper/catalogue.ts';
import { type OpenCase, openCase } from './open-case.ts';

/** A new case from the program's own lists, worked out at once. It passes through its own text, so that nothing starts that could not be saved. */
export function startCase(wanted: NewCase): Outcome<OpenCase> {
  const content = newCase(wanted);
  if (content !== null) return openCase(writeCase(content));
  const known = templateEntries.map((template) => template.id);
  return outcome({} as OpenCase, [
    {
      kind: 'unknown reference',
      path: 'new case',
      given: `${wanted.virgin}, ${wanted.recovered}`,
      what: 'pair of furnishes for one product',
      known,
    },
  ]);
}
