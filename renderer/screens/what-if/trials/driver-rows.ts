import type { Spread, TrialSummary } from '../../../../src/index.ts';
import { addingUp } from '../../../numbers/adding-up.ts';
import { inputName } from '../tornado/input-name.ts';

export interface DriverRow {
  readonly key: string;
  readonly name: string;
  /** Of 100 parts of the variance, to a tenth; rows add up to 100. */
  readonly share: number;
  readonly isRest: boolean;
}

const rest = { key: 'rest', name: 'Bends and joint effects', isRest: true };

/** Who makes the result spread: inputs by their share, largest first, and what they do not explain one by one. Empty where nothing spreads. */
export function driverRows({ variance }: TrialSummary, spread: Spread): readonly DriverRow[] {
  if (variance.inputs.length === 0) return [];
  const rows = [
    ...variance.inputs.map((input) => ({ key: input.id, name: inputName(input, spread), isRest: false })),
    rest,
  ];
  const parts = [...variance.inputs.map(({ share }) => share * 100), variance.rest * 100];
  const shares = addingUp(parts, 100, 1);
  return rows.map((row, place) => ({ ...row, share: shares[place] ?? Number.NaN }));
}
