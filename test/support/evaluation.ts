import { readCase } from '../../src/case/read-case.ts';
import type { Case } from '../../src/case/case.ts';
import type { Decimal } from '../../src/kernel/evaluate/decimal-settings.ts';
import {
  type Changes,
  type DecimalOutcome,
  type DecimalValues,
  evaluateDecimal,
} from '../../src/kernel/evaluate/decimal.ts';
import { Failure } from '../../src/kernel/evaluate/failure.ts';
import { type Model, buildModel } from '../../src/paper/model.ts';

/** A case worked out in decimals, asked by the ids of its quantities. */
export class Evaluation {
  readonly model: Model;
  readonly values: DecimalValues;

  constructor(model: Model, changes: Changes = new Map()) {
    this.model = model;
    this.values = evaluateDecimal(model.graph, changes);
  }

  /** A value or a failure; throws for a quantity that the model does not have. */
  outcome(id: string): DecimalOutcome {
    const place = this.model.graph.positions.get(id);
    const found = place === undefined ? undefined : this.values[place];
    if (found === undefined) throw new Error(`The model has no quantity "${id}"`);
    return found;
  }

  exact(id: string): Decimal {
    const found = this.outcome(id);
    if (found instanceof Failure) throw new Error(`"${id}" cannot be worked out: ${JSON.stringify(found.reason)}`);
    return found;
  }

  number(id: string): number {
    return this.exact(id).toNumber();
  }

  /** The sum of all of these that the model has; a component that a line never holds has no quantity. */
  sumOfPresent(ids: readonly string[]): number {
    return ids.filter((id) => this.model.graph.positions.has(id)).reduce((sum, id) => sum + this.number(id), 0);
  }

  /** The same model with other figures, given in the entry units of the inputs. */
  withChanges(changes: Readonly<Record<string, string>>): Evaluation {
    return new Evaluation(this.model, new Map(Object.entries(changes)));
  }
}

/** Works a whole case out; a case with anything wrong in its figures is an error of the test. */
export function evaluated(content: Case): Evaluation {
  const model = buildModel(content);
  if (model.problems.length > 0) throw new Error(`The case has problems: ${JSON.stringify(model.problems)}`);
  return new Evaluation(model);
}

/** The same from the text of a case file. */
export function evaluatedText(text: string): Evaluation {
  const read = readCase(text);
  if (!read.ok) throw new Error(`Not a case: ${JSON.stringify(read.problems)}`);
  return evaluated(read.value);
}
