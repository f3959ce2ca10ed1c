import type { Sensitivity } from '../../../../src/index.ts';
import { addingUp } from '../../../numbers/adding-up.ts';

/** What the swings rest on, in whole per cent that add up to 100; "" where nothing swings. */
export function restsWords({ rests }: Pick<Sensitivity, 'rests'>): string {
  const shares = [rests.measured, rests.sourced, rests['rule of thumb']];
  if (shares.reduce((sum, share) => sum + share, 0) === 0) return '';
  const parts = shares.map((share) => share * 100);
  const [measured = 0, sourced = 0, thumb = 0] = addingUp(parts, 100, 0);
  const words = `measured ${measured}\u00a0%, sourced ${sourced}\u00a0%, rule of thumb ${thumb}\u00a0%`;
  return `It rests on: ${words} of all swings.`;
}
