import { type Declaration, Quantity } from '../expression/quantity.ts';
import { UnitMismatch } from '../units/unit-mismatch.ts';
import { parseUnit } from '../units/unit.ts';
import type { Graph } from './graph.ts';
import type { InputDeclaration } from './input-declaration.ts';
import { order } from './order.ts';

/** Collects inputs and named quantities while a model is written down, and puts them into working order at the end. */
export class GraphBuilder {
  readonly #named = new Map<string, Quantity>();
  readonly #inputs = new Map<string, InputDeclaration>();

  /** The same id gives the same input: two routes that buy one material share its price. Another unit under that id is refused. */
  input(declaration: InputDeclaration, unit: string): Quantity {
    const known = this.#named.get(declaration.id);
    if (known !== undefined) return this.#shared(known, declaration.id, unit);
    const shownIn = declaration.entryUnit === unit ? {} : { shownIn: declaration.entryUnit };
    const where = declaration.where === undefined ? {} : { where: declaration.where };
    const named = { id: declaration.id, label: declaration.label, ...where, ...shownIn };
    const quantity = new Quantity({ op: 'input', args: [], key: declaration.id }, parseUnit(unit), named);
    this.#inputs.set(declaration.id, declaration);
    this.#named.set(declaration.id, quantity);
    return quantity;
  }

  /** Names a quantity and promises its unit; a quantity of another unit is refused. */
  define(declaration: Declaration & { readonly unit: string }, quantity: Quantity): Quantity {
    const { unit, ...rest } = declaration;
    const promised = parseUnit(unit);
    if (promised !== quantity.unit) {
      throw new UnitMismatch(
        `"${rest.id}" is declared otherwise than worked out:`,
        { name: 'the declaration', unit: promised },
        { name: 'the equation', unit: quantity.unit },
      );
    }
    if (this.#named.has(rest.id)) throw new Error(`"${rest.id}" is defined twice`);
    const named = quantity.named(rest);
    this.#named.set(rest.id, named);
    return named;
  }

  /** A quantity that is defined further on. Rings are found when the graph is built. */
  later(id: string, unit: string): Quantity {
    return new Quantity({ op: 'later', args: [], id }, parseUnit(unit));
  }

  #shared(known: Quantity, id: string, unit: string): Quantity {
    if (!this.#inputs.has(id)) throw new Error(`"${id}" is worked out, and cannot be an input as well`);
    const wanted = parseUnit(unit);
    if (wanted === known.unit) return known;
    const [before, now] = [
      { name: 'before', unit: known.unit },
      { name: 'now', unit: wanted },
    ];
    throw new UnitMismatch(`the input "${id}" is asked for in two units:`, before, now);
  }

  build(): Graph {
    const nodes = order([...this.#named.values()], this.#named);
    const positions = new Map<string, number>();
    for (const node of nodes) if (node.declaration !== null) positions.set(node.declaration.id, node.index);
    return { nodes, positions, inputs: [...this.#inputs.values()] };
  }
}
