import type { OperationName } from '../kernel/expression/operation.ts';
import type { Node } from '../kernel/graph/graph.ts';
import type { Working } from '../kernel/graph/working.ts';
import { dimensionless } from '../kernel/units/unit.ts';

/** How tightly a written term holds together: 3 a name or number, 2 a product, 1 a sum, 0 a phrase. */
interface Term {
  readonly text: string;
  readonly hold: number;
}

type Writer = (terms: readonly Term[], node: Node) => Term;
type Made = Exclude<OperationName, 'input' | 'constant'>;

const atom = (text: string): Term => ({ text, hold: 3 });
const wrapped = (term: Term | undefined, least: number): string =>
  term === undefined ? '' : term.hold < least ? `(${term.text})` : term.text;
const through: Writer = ([only]) => only ?? atom('');

/** One way to write each operation; a product with a pure 1 that only changes the unit is left out. */
const writers: { readonly [Name in Made]: Writer } = {
  same: through,
  later: through,
  within: through,
  sum: (terms) => ({ text: terms.map((term) => wrapped(term, 1)).join(' + '), hold: 1 }),
  subtract: ([left, right]) => ({ text: `${wrapped(left, 1)} \u2212 ${wrapped(right, 2)}`, hold: 1 }),
  multiply: ([left, right]) => ({ text: `${wrapped(left, 2)} \u00d7 ${wrapped(right, 2)}`, hold: 2 }),
  divide: ([left, right]) => ({ text: `${wrapped(left, 2)} \u00f7 ${wrapped(right, 3)}`, hold: 2 }),
  power: ([base, exponent]) => ({ text: `${wrapped(base, 3)} to the power of ${wrapped(exponent, 3)}`, hold: 1 }),
  lesser: ([left, right]) => ({ text: `the lesser of ${wrapped(left, 1)} and ${wrapped(right, 1)}`, hold: 0 }),
  greater: ([left, right]) => ({ text: `the greater of ${wrapped(left, 1)} and ${wrapped(right, 1)}`, hold: 0 }),
  whenAbove: ([value, limit, above, otherwise]) => ({
    text: `${wrapped(above, 1)} where ${wrapped(value, 1)} is above ${wrapped(limit, 1)}, else ${wrapped(otherwise, 1)}`,
    hold: 0,
  }),
};

/** How the leaves of an equation are written: an input or a named quantity by its label or its number, a fixed number by its digits. */
export interface Leaves {
  readonly named: (node: Node) => string;
  readonly fixed: (digits: string) => string;
}

/** The equation of a quantity; "" for an input, which is given. */
export function equation(working: Working, leaves: Leaves): string {
  return working.kind === 'named' ? '' : written(working, leaves).text;
}

function written(working: Working, leaves: Leaves): Term {
  if (working.kind === 'named') return atom(leaves.named(working.node));
  if (working.kind === 'fixed') return atom(leaves.fixed(working.digits));
  const { node, of } = working;
  const kept = node.operation.op === 'multiply' ? of.filter((part) => !onlyChangesUnit(part)) : of;
  const terms = kept.map((part) => written(part, leaves));
  const [first] = terms;
  if (node.operation.op === 'multiply' && terms.length < 2) return first ?? atom('1');
  return writers[node.operation.op as Made](terms, node);
}

function onlyChangesUnit(part: Working): boolean {
  return part.kind === 'fixed' && part.digits === '1' && part.node.unit !== dimensionless;
}
