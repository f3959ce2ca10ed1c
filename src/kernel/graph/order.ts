import type { Quantity } from '../expression/quantity.ts';
import { UnitMismatch } from '../units/unit-mismatch.ts';
import type { Unit } from '../units/unit.ts';
import type { Node } from './graph.ts';

/** The model itself is wrong: some quantities are worked out from one another in a ring. */
export class Cycle extends Error {
  readonly ring: readonly string[];
  constructor(ring: readonly string[]) {
    super(`These are worked out from one another: ${ring.join(', then ')}`);
    this.name = 'Cycle';
    this.ring = ring;
  }
}

/**
 * Puts quantities into an order in which each comes after what it is made of (depth first, without recursion, so that depth is not
 * limited by the stack). Throws `Cycle` with the ids on the ring, and an error for a name that was promised and never defined.
 */
export function order(wanted: readonly Quantity[], named: ReadonlyMap<string, Quantity>): Node[] {
  const nodes: Node[] = [];
  const done = new Map<Quantity, number>();
  const path = new Set<Quantity>();
  const parts = (quantity: Quantity): readonly Quantity[] =>
    quantity.operation.op === 'later'
      ? [promised(quantity.operation.id, quantity.unit, named)]
      : quantity.operation.args;
  const stack = [...wanted].reverse().map((quantity) => ({ quantity, next: 0 }));
  for (let top = stack.at(-1); top !== undefined; top = stack.at(-1)) {
    const { quantity } = top;
    if (done.has(quantity)) {
      stack.pop();
      continue;
    }
    path.add(quantity);
    const part = parts(quantity)[top.next];
    if (part !== undefined) {
      top.next += 1;
      if (path.has(part)) throw new Cycle(ringFrom(part, [...path]));
      if (!done.has(part)) stack.push({ quantity: part, next: 0 });
      continue;
    }
    const args = parts(quantity).map((each) => done.get(each) ?? -1);
    done.set(quantity, nodes.length);
    nodes.push({
      index: nodes.length,
      operation: quantity.operation,
      args,
      unit: quantity.unit,
      declaration: quantity.declaration,
    });
    path.delete(quantity);
    stack.pop();
  }
  return nodes;
}

function promised(id: string, unit: Unit, named: ReadonlyMap<string, Quantity>): Quantity {
  const quantity = named.get(id);
  if (quantity === undefined) throw new Error(`"${id}" was promised and never defined`);
  if (quantity.unit === unit) return quantity;
  throw new UnitMismatch(
    `"${id}" is promised otherwise than defined:`,
    { name: 'the promise', unit },
    { name: 'the definition', unit: quantity.unit },
  );
}

function ringFrom(start: Quantity, path: readonly Quantity[]): string[] {
  const ring = path.slice(path.indexOf(start));
  const names = ring.flatMap((quantity) => (quantity.declaration === null ? [] : [quantity.declaration.id]));
  return [...names, names[0] ?? 'itself'];
}
