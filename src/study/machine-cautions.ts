import { kindOfLines } from '../case/route-kind.ts';
import { contributionId, effectId, effectNames, priceId, soldOutId } from '../paper/machine-effect/effect-ids.ts';
import type { OpenCase } from './open-case.ts';

/** What to look at in what the furnish does to the machine. */
export type MachineCaution =
  | {
      readonly kind: 'no machine effect';
      readonly about: string;
      /** Recovered share of the fresh stock of the two routes that are compared, in per cent. */
      readonly base: { readonly route: string; readonly share: number };
      readonly with: { readonly route: string; readonly share: number };
    }
  | { readonly kind: 'hours without a cost'; readonly about: string; readonly route: string; readonly hours: number }
  | { readonly kind: 'seconds without an allowance'; readonly about: string; readonly route: string }
  | { readonly kind: 'price and contribution'; readonly about: string };

/** Further apart than this, in points of recovered share, two furnishes hardly run alike. Common practice, no source. */
const alike = 10;

export function machineCautions(open: OpenCase): readonly MachineCaution[] {
  return [...noneEntered(open), ...freeHours(open), ...freeSeconds(open), ...twoPrices(open)];
}

/** Whether somebody said, for a route, what its furnish does to the machine; that it does nothing counts as said. */
export function isEffectEntered({ content }: OpenCase, routeId: string): boolean {
  const names = [...Object.keys(effectNames), 'serviceFactor'];
  const asksStrength = content.routes.some(({ id, service }) => id === routeId && service === 'from strength');
  return asksStrength || names.some((name) => Object.hasOwn(content.inputs, `${routeId}.machine.${name}`));
}

function noneEntered(open: OpenCase): readonly MachineCaution[] {
  const { base, with: other } = open.content.compare;
  if (isEffectEntered(open, base) || isEffectEntered(open, other)) return [];
  const [left, right] = [recovered(open, base), recovered(open, other)];
  return Math.abs(left.share - right.share) > alike
    ? [{ kind: 'no machine effect', about: `${other}.machine.speed`, base: left, with: right }]
    : [];
}

function recovered({ content, values }: OpenCase, id: string): { readonly route: string; readonly share: number } {
  const route = content.routes.find((each) => each.id === id);
  const lines = (route?.lines ?? []).filter((line) => kindOfLines([line], content.materials) === 'recovered');
  const share = lines.reduce((sum, line) => sum + values.number(`${id}.${line.id}.share`) * 100, 0);
  return { route: route?.label ?? id, share };
}

const isSoldOut = ({ values }: OpenCase): boolean => values.number(soldOutId) > 0.5;

function freeHours(open: OpenCase): readonly MachineCaution[] {
  if (isSoldOut(open)) return [];
  return open.content.routes.flatMap(({ id, label }): readonly MachineCaution[] => {
    const hours = open.values.number(effectId(id, 'extraHours'));
    return hours !== 0 && open.values.number(effectId(id, 'costPerHour')) === 0
      ? [{ kind: 'hours without a cost', about: 'machine.extraHour', route: label, hours }]
      : [];
  });
}

function freeSeconds({ content, values }: OpenCase): readonly MachineCaution[] {
  const about = 'machine.secondsAllowance';
  if (values.number(about) !== 0) return [];
  return content.routes.flatMap(({ id, label }): readonly MachineCaution[] =>
    values.number(`${id}.machine.seconds`) > 0 ? [{ kind: 'seconds without an allowance', about, route: label }] : [],
  );
}

function twoPrices({ content }: OpenCase): readonly MachineCaution[] {
  const both = [priceId, contributionId].every((id) => Object.hasOwn(content.inputs, id));
  return both ? [{ kind: 'price and contribution', about: contributionId }] : [];
}
