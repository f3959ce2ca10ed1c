import type { Decimal } from '../../src/kernel/evaluate/decimal-settings.ts';
import type { DecimalValues } from '../../src/kernel/evaluate/decimal.ts';
import { Failure } from '../../src/kernel/evaluate/failure.ts';
import type { Model } from '../../src/paper/model.ts';

/** Looks exact values up by id; a failure or an unknown id is an error of the test. */
export function decimalReader(model: Model, values: DecimalValues): (id: string) => Decimal {
  return (id) => {
    const value = values[model.graph.positions.get(id) ?? -1];
    if (value === undefined || value instanceof Failure) throw new Error(`No value for "${id}"`);
    return value;
  };
}
