import type { Unit } from './unit.ts';

/** The model itself is wrong: it adds or compares unlike things. Never caused by what a person typed. */
export class UnitMismatch extends Error {
  constructor(doing: string, left: { name: string; unit: Unit }, right: { name: string; unit: Unit }) {
    super(`${doing} ${left.name} (${left.unit.text}) and ${right.name} (${right.unit.text})`);
    this.name = 'UnitMismatch';
  }
}
