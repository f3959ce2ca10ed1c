import { type Quantity, total } from '../kernel/expression/quantity.ts';
import type { Plant } from './plant.ts';
import type { Residue } from './residue.ts';
import { type InputSpec, type Sheet, notNegative } from './sheet.ts';

const specOf = (stream: string, label: string): InputSpec => ({
  id: `residue.${stream}.electricity`,
  label: `${label}: electricity of pressing and conveying`,
  unit: 'kWh/bdt',
  allowed: notNegative,
});

/** Whether any stream of the case takes electricity: then every route says how much. */
export function pressesResidues(sheet: Sheet): boolean {
  return Object.keys(sheet.case.inputs).some((id) => /^residue\..*\.electricity$/u.test(id));
}

/** Electricity of the presses and compactors of rejects and sludge, kWh/t; null where no stream of the case takes any. */
export function residuePower(sheet: Sheet, { route }: Plant, streams: readonly Residue[]): Quantity | null {
  const used = streams.flatMap(({ stream, label, dry }) => {
    const spec = specOf(stream, label);
    return sheet.has(spec) ? [dry.times(sheet.input(spec))] : [];
  });
  if (!pressesResidues(sheet)) return null;
  return sheet.define(
    `${route.id}.electricity.residues`,
    'Electricity, rejects and sludge',
    'kWh/t',
    total(used, 'kWh/t'),
    { where: route.label, note: 'Dry mass of each stream times what its press or compactor takes.' },
  );
}
