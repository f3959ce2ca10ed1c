import type { Case } from '../../src/case/case.ts';
import { openCase } from '../../src/index.ts';
import type { Model } from '../../src/paper/model.ts';
import { type OpenCase, workOut } from '../../src/study/open-case.ts';
import { demonstrationText, valueOf } from '../examples/demonstration.ts';
import { randomFigures, randomModel } from '../support/random-figures.ts';

/** The demonstration case with a random figure, within its usual range, for everything that is a default there. */
export function shakenDemonstration(seed: number): OpenCase {
  const { content, model } = valueOf(openCase(demonstrationText));
  return workedOutWith(content, model, randomFigures(model, seed));
}

/** A case with random structure and random figures. */
export function randomOpenCase(seed: number): OpenCase {
  const { model, figures } = randomModel(seed, { lines: 2, stages: 3 });
  return workedOutWith(model.case, model, figures);
}

function workedOutWith(content: Case, { graph }: Model, figures: ReadonlyMap<string, string>): OpenCase {
  const inputs = graph.inputs.map((input) => [
    input.id,
    { value: figures.get(input.id) ?? '', unit: input.entryUnit, status: 'invented' as const, source: 'Random' },
  ]);
  return valueOf(workOut({ ...content, inputs: Object.fromEntries(inputs) as Case['inputs'] }));
}
