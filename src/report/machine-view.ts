import { inForce } from '../kernel/graph/input-declaration.ts';
import {
  type EffectCause,
  type MachineView,
  contributionId,
  effectCauses,
  effectId,
  priceId,
  soldOutId,
  stepId,
} from '../paper/machine-effect/effect-ids.ts';
import { isEffectEntered } from '../study/machine-cautions.ts';
import type { OpenCase } from '../study/open-case.ts';
import { rounded, roundedParts, shifted, shownDifference } from '../study/rounding.ts';
import { spreadOf } from './spread-view.ts';

/** One step from what costs alone come to, to what is left: recovered less virgin, or whichever routes are compared. */
interface EffectStepShown {
  readonly id: EffectCause | 'costsAlone' | 'takenBack' | 'left';
  readonly label: string;
  readonly quantityId: string;
  /** Money a year; NaN where it cannot be worked out. */
  readonly perYear: number;
  /** Millions with two decimals, rounded so that the steps add up to what is left; "" where it cannot be worked out. */
  readonly shown: string;
}

export interface EffectSteps {
  readonly view: MachineView;
  readonly costsAlone: EffectStepShown;
  readonly causes: readonly EffectStepShown[];
  readonly takenBack: EffectStepShown;
  readonly left: EffectStepShown;
}

/** What the furnish does to the machine, in both views, whichever is in force. */
export interface MachineEffect {
  readonly inForce: MachineView;
  /** Whether anything was said of either route, if only that nothing happens. */
  readonly isEntered: boolean;
  /** Whether there is a price of the product, or a contribution, to say what a lost tonne is worth. */
  readonly isPriced: boolean;
  readonly soldOut: EffectSteps;
  readonly ordersLimited: EffectSteps;
  /** Tonnes, hours and worths behind the steps by their ids; NaN where they cannot be worked out. */
  readonly figures: Readonly<Record<string, number>>;
}

export function machineEffectOf(open: OpenCase): MachineEffect {
  const { values, model } = open;
  const { baseId, withId } = model.difference;
  const { difference } = spreadOf(open);
  const view: MachineView = values.number(soldOutId) > 0.5 ? 'soldOut' : 'ordersLimited';
  const isPriced = model.graph.inputs.some(
    (input) => [priceId, contributionId].includes(input.id) && inForce(input) !== null,
  );
  return {
    inForce: view,
    isEntered: [baseId, withId].some((id) => isEffectEntered(open, id)),
    isPriced,
    soldOut: stepsOf(open, 'soldOut', view === 'soldOut' ? difference.shownPerYear : null),
    ordersLimited: stepsOf(open, 'ordersLimited', view === 'ordersLimited' ? difference.shownPerYear : null),
    figures: Object.fromEntries(
      [
        ...[baseId, withId].flatMap((id) => [...ofRoute, ...ofBoth].map((name) => effectId(id, name))),
        ...ofBoth.map((name) => effectId('difference', name)),
        'product.tonnes',
        'product.hours',
      ].map((id) => [id, values.number(id)]),
    ),
  };
}

const ofBoth = [
  'tonnesFewer.slower',
  'tonnesFewer.breaks',
  'tonnesFewer.heavier',
  'soldOut.secondTonnes',
  'ordersLimited.secondTonnes',
  'ordersLimited.tonnesMore',
  'extraHours',
  'extraHours.slower',
  'extraHours.breaks',
  'extraHours.heavier',
] as const;
const ofRoute = ['contribution', 'costPerTonne', 'costPerHour', 'price', 'soldOut.tonnes'] as const;

/** `whole` is how the difference of the year is shown elsewhere, where this view is in force: it is shown the same here. */
function stepsOf({ values }: OpenCase, view: MachineView, whole: string | null): EffectSteps {
  const ids = {
    alone: effectId('difference', 'costsAlone'),
    left: stepId('difference', view, 'left'),
    back: stepId('difference', view, 'takenBack'),
  };
  const million = (id: string): string => {
    const digits = values.exact(id);
    return digits === '' ? '' : shifted(digits, -6);
  };
  const exact = [ids.alone, ...effectCauses.map(({ id }) => stepId('difference', view, id))].map(million);
  const left = whole ?? (million(ids.left) === '' ? '' : rounded(million(ids.left), 2));
  const parts =
    exact.includes('') || left === ''
      ? exact.map((digits) => (digits === '' ? '' : rounded(digits, 2)))
      : roundedParts(exact, 2, left);
  const alone = parts[0] ?? '';
  const step = (id: EffectStepShown['id'], label: string, quantityId: string, shown: string): EffectStepShown => ({
    id,
    label,
    quantityId,
    perYear: values.number(quantityId),
    shown,
  });
  return {
    view,
    costsAlone: step('costsAlone', 'Costs alone', ids.alone, alone),
    causes: effectCauses.map(({ id, label }, place) =>
      step(id, label, stepId('difference', view, id), parts[place + 1] ?? ''),
    ),
    takenBack: step(
      'takenBack',
      'The machine',
      ids.back,
      left === '' || alone === '' ? '' : shownDifference(left, alone, 2),
    ),
    left: step('left', 'Left', ids.left, left),
  };
}
