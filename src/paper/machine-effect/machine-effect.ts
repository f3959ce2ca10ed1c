import { type Quantity, constant, total } from '../../kernel/expression/quantity.ts';
import type { Plant } from '../plant.ts';
import type { Sheet } from '../sheet.ts';
import type { LineSpec } from '../statement-writer.ts';
import { type EffectCause, type EffectStep, type MachineView, effectCauses, effectId, stepId } from './effect-ids.ts';
import { effectInputs } from './effect-inputs.ts';
import { costsAlone } from './following-cost.ts';
import { ordersLimitedSteps } from './orders-limited.ts';
import { type Steps, soldOutSteps } from './sold-out.ts';

/** The input or quantity from which a line of the statement comes, by what limits the machine. */
const notes: Readonly<Record<EffectCause, string>> = {
  slower: 'Sold out, what the tonnes lost to speed are worth; orders limited, what the extra hours cost.',
  breaks: 'At the speed there is: sold out, what the tonnes lost are worth; orders limited, what the extra hours cost.',
  seconds: 'Tonnes of second quality, before a heavier sheet, times what they sell for less.',
  heavier:
    'Sold out, the sales that a heavier sheet takes; orders limited, its extra hours. The extra tonnes stand in the lines above, which are for the same service, and are left out here.',
};

/**
 * What the furnish does to the machine, in money: the steps of both views, which add up to what is left, and the lines by which the view in
 * force enters the statement. `lines` are all other lines of the route.
 */
export function machineEffect(sheet: Sheet, plant: Plant, lines: readonly LineSpec[]): readonly LineSpec[] {
  const { route, mill } = plant;
  const inputs = effectInputs(sheet, plant);
  const alone = costsAlone(sheet, plant, inputs, lines);
  const soldOut = soldOutSteps(sheet, plant, inputs, alone);
  const limited = ordersLimitedSteps(sheet, plant, inputs, alone);
  const named = { soldOut: writeSteps('soldOut', soldOut), ordersLimited: writeSteps('ordersLimited', limited) };

  function writeSteps(view: MachineView, steps: Steps): Steps {
    const words = view === 'soldOut' ? 'sold out' : 'orders limited';
    const write = (step: EffectStep, label: string, quantity: Quantity, note: string): Quantity =>
      sheet.define(stepId(route.id, view, step), `${label}, ${words}`, 'EUR/a', quantity, { where: route.label, note });
    const written = Object.fromEntries(
      effectCauses.map(({ id, label }) => [id, write(id, label, steps[id], stepNotes[view][id])]),
    ) as unknown as Steps;
    const back = write(
      'takenBack',
      'Whole machine effect',
      total(Object.values(written), `${sheet.case.currency}/a`),
      'Speed, breaks and washes, second quality and a heavier sheet.',
    );
    write(
      'left',
      'Whole cost with the machine effect',
      alone.whole.plus(back),
      'Costs before any machine effect, and the effect.',
    );
    return written;
  }

  const half = constant('0.5');
  const inForce = (ofSoldOut: Quantity, ofLimited: Quantity): Quantity =>
    inputs.soldOut.whenAbove(half, ofSoldOut, ofLimited).dividedBy(mill.tonnes);
  // The lines of the statement are for the tonnes of the same service, so they hold these already.
  const above = mill.tonnes.times(inputs.service.minus(constant('1'))).times(alone.perTonne);
  const amounts: Steps = {
    slower: inForce(named.soldOut.slower, named.ordersLimited.slower),
    breaks: inForce(named.soldOut.breaks, named.ordersLimited.breaks),
    seconds: inForce(named.soldOut.seconds, named.ordersLimited.seconds),
    heavier: inForce(named.soldOut.heavier.minus(above), limited.heavierHours),
  };
  return effectCauses.map(({ id, label }): LineSpec => ({
    account: 'machineEffect',
    key: id,
    label,
    amount: amounts[id],
    driverId: effectId(route.id, id === 'seconds' ? 'soldOut.secondTonnes' : `tonnesFewer.${id}`),
    nature: 'technical',
    note: notes[id],
  }));
}

const stepNotes: Readonly<Record<MachineView, Readonly<Record<EffectCause, string>>>> = {
  soldOut: {
    slower: 'Tonnes lost to speed, times what a lost tonne is worth.',
    breaks: 'Tonnes lost at the speed there is, times what a lost tonne is worth.',
    seconds: 'Second quality among the tonnes made, times what it sells for less.',
    heavier: 'Tonnes that no longer count as sold, times the price less the allowance for the seconds among them.',
  },
  ordersLimited: {
    slower: 'Extra hours at the speed there is, times what an hour costs.',
    breaks: 'Further hours at the speed there is, times what an hour costs.',
    seconds: 'Second quality among the tonnes sold, times what it sells for less.',
    heavier: 'The extra tonnes to make, and the hours they take at the speed and time there are.',
  },
};
