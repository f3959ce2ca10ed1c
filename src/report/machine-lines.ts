import { formatNumber } from '../wording/number-format.ts';
import type { EffectSteps, MachineEffect } from './machine-view.ts';
import { figuresTable } from './text-table.ts';

/** Which view of the machine is in use, and the steps of both, as plain text. */
export function machineLines(effect: MachineEffect, locale: string): string {
  if (!effect.isEntered) return 'Machine effect: none entered.';
  const inUse =
    effect.inForce === 'soldOut'
      ? 'The machine is sold out (machine.soldOut is 1): what a furnish takes from it are tonnes.'
      : 'Orders limit the machine (machine.soldOut is 0): what a furnish takes from it are hours.';
  const row = ({ view, costsAlone, causes, left }: EffectSteps): string[] => [
    `${view === 'soldOut' ? 'Sold out' : 'Orders limited'}${view === effect.inForce ? ', in use' : ''}`,
    ...[costsAlone, ...causes, left].map(({ shown }) =>
      shown === '' ? 'not yet' : formatNumber(shown, { locale, decimals: 2, sign: true }),
    ),
  ];
  const { costsAlone, causes, left } = effect.soldOut;
  const heads = [
    'Machine effect, million a year',
    ...[costsAlone, ...causes, left].map(({ label }) => label.toLowerCase()),
  ];
  return `${inUse}\n${figuresTable(heads, [row(effect.soldOut), row(effect.ordersLimited)])}`;
}
