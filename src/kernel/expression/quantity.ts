import { keepsBounds } from '../evaluate/keeps-bounds.ts';
import { UnitMismatch } from '../units/unit-mismatch.ts';
import { type Unit, dimensionless, divideUnits, multiplyUnits, parseUnit } from '../units/unit.ts';
import type { Bounds, Operation } from './operation.ts';

/** How a named quantity introduces itself. `note` is one plain sentence on how it is worked out, where the equation needs one. */
export interface Declaration {
  readonly id: string;
  readonly label: string;
  /** What it belongs to: "Recovered middle ply, mixed papers, fine screen". */
  readonly where?: string;
  readonly note?: string;
  /** The unit in which people read it, when that is not the unit it is reckoned in: a share is reckoned in 1 and read in %. */
  readonly shownIn?: string;
}

/**
 * One number that is not known yet: how it is worked out and in what unit. Immutable. Arithmetic checks units at once, and drops
 * terms that are known to be nothing (adding 0, multiplying by 0 or 1), so that an absent component costs nothing.
 */
export class Quantity {
  readonly operation: Operation<Quantity>;
  readonly unit: Unit;
  readonly declaration: Declaration | null;

  constructor(operation: Operation<Quantity>, unit: Unit, declaration: Declaration | null = null) {
    this.operation = operation;
    this.unit = unit;
    this.declaration = declaration;
  }

  plus(other: Quantity): Quantity {
    this.#mustMatch('adding', other);
    return total([this, other], this.unit);
  }

  minus(other: Quantity): Quantity {
    this.#mustMatch('subtracting', other);
    return isConstant(other, '0') ? this : new Quantity({ op: 'subtract', args: [this, other] }, this.unit);
  }

  times(other: Quantity): Quantity {
    const unit = multiplyUnits(this.unit, other.unit);
    if (isConstant(this, '0') || isConstant(other, '0')) return constant('0', unit);
    if (isConstant(other, '1') && other.unit === dimensionless) return this;
    if (isConstant(this, '1') && this.unit === dimensionless) return other;
    return new Quantity({ op: 'multiply', args: [this, other] }, unit);
  }

  dividedBy(other: Quantity): Quantity {
    const unit = divideUnits(this.unit, other.unit);
    if (isConstant(other, '1') && other.unit === dimensionless) return this;
    if (isConstant(this, '0')) return constant('0', unit);
    return new Quantity({ op: 'divide', args: [this, other] }, unit);
  }

  /** Both sides must be dimensionless. */
  toThePower(exponent: Quantity): Quantity {
    if (this.unit !== dimensionless || exponent.unit !== dimensionless) {
      throw new UnitMismatch('a power needs plain numbers, not', describe(this), describe(exponent));
    }
    return new Quantity({ op: 'power', args: [this, exponent] }, dimensionless);
  }

  lesserOf(other: Quantity): Quantity {
    this.#mustMatch('comparing', other);
    return new Quantity({ op: 'lesser', args: [this, other] }, this.unit);
  }

  greaterOf(other: Quantity): Quantity {
    this.#mustMatch('comparing', other);
    return new Quantity({ op: 'greater', args: [this, other] }, this.unit);
  }

  /** `above` where this exceeds `limit`, else `otherwise`. */
  whenAbove(limit: Quantity, above: Quantity, otherwise: Quantity): Quantity {
    this.#mustMatch('comparing', limit);
    above.#mustMatch('choosing between', otherwise);
    return new Quantity({ op: 'whenAbove', args: [this, limit, above, otherwise] }, above.unit);
  }

  /** The same number; a failure where it leaves the bounds. */
  within(bounds: Bounds): Quantity {
    const isSafe = this.operation.op === 'constant' && keepsBounds(this.operation.digits, bounds);
    return isSafe ? this : new Quantity({ op: 'within', args: [this], bounds }, this.unit);
  }

  /** 1 - this, for a share or a fraction. */
  complement(): Quantity {
    return constant('1', this.unit).minus(this);
  }

  named(declaration: Declaration): Quantity {
    const operation: Operation<Quantity> = this.declaration === null ? this.operation : { op: 'same', args: [this] };
    return new Quantity(operation, this.unit, declaration);
  }

  #mustMatch(doing: string, other: Quantity): void {
    if (this.unit !== other.unit) throw new UnitMismatch(doing, describe(this), describe(other));
  }
}

/** A fixed number of nature or definition, kept as digits. */
export function constant(digits: string, unit: Unit | string = dimensionless): Quantity {
  return new Quantity({ op: 'constant', args: [], digits }, typeof unit === 'string' ? parseUnit(unit) : unit);
}

/** The sum of any number of terms of one unit; `unit` says which, so that an empty sum is a zero of something. */
export function total(terms: readonly Quantity[], unit: Unit | string): Quantity {
  const common = typeof unit === 'string' ? parseUnit(unit) : unit;
  for (const term of terms) {
    if (term.unit === common) continue;
    const fitting = terms.find((each) => each.unit === common);
    const sum = fitting === undefined ? { name: 'a sum', unit: common } : describe(fitting);
    throw new UnitMismatch('adding', describe(term), sum);
  }
  const present = terms.filter((term) => !isConstant(term, '0'));
  const [first] = present;
  if (first === undefined) return constant('0', common);
  return present.length === 1 ? first : new Quantity({ op: 'sum', args: present }, common);
}

export function isConstant(quantity: Quantity, digits: string): boolean {
  return quantity.operation.op === 'constant' && quantity.operation.digits === digits;
}

function describe(quantity: Quantity): { name: string; unit: Unit } {
  return { name: quantity.declaration?.id ?? `an unnamed ${quantity.operation.op}`, unit: quantity.unit };
}
