import { evaluateDecimal } from '../../src/kernel/evaluate/decimal.ts';
import { Failure } from '../../src/kernel/evaluate/failure.ts';
import { type Quantity, constant } from '../../src/kernel/expression/quantity.ts';
import { GraphBuilder } from '../../src/kernel/graph/graph-builder.ts';

/** The numbers behind quantities that are made of fixed figures only. */
export function valuesOf(quantities: readonly Quantity[]): number[] {
  const builder = new GraphBuilder();
  quantities.forEach((quantity, place) =>
    builder.define({ id: `asked${String(place)}`, label: 'Asked for', unit: quantity.unit.text }, quantity),
  );
  const graph = builder.build();
  const values = evaluateDecimal(graph);
  return quantities.map((_, place) => {
    const value = values[graph.positions.get(`asked${String(place)}`) ?? -1];
    if (value === undefined || value instanceof Failure) throw new Error('The quantity cannot be worked out');
    return value.toNumber();
  });
}

export function valueOf(quantity: Quantity): number {
  return valuesOf([quantity])[0] ?? NaN;
}

/** A plain number as a quantity. */
export function plain(value: number | string): Quantity {
  return constant(String(value));
}
