/** Inputs by which a person says what a furnish does to the machine, beside the service factor. Ids are `<route>.machine.<name>`. */
export const effectNames = {
  speed: 'Speed of the machine, share of the reference',
  time: 'Time running, breaks and washes, share of the reference',
  seconds: 'Second quality, share of what is sold',
} as const;

/** What the furnish does, in the order in which the steps are taken. */
export const effectCauses = [
  { id: 'slower', label: 'Slower machine' },
  { id: 'breaks', label: 'Breaks and washes' },
  { id: 'seconds', label: 'Second quality' },
  { id: 'heavier', label: 'Heavier sheet' },
] as const;

export type EffectCause = (typeof effectCauses)[number]['id'];
/** A step from what costs alone come to, all steps together, or what is left after them. */
export type EffectStep = EffectCause | 'takenBack' | 'left';

/** What limits the machine: its own hours, all of which sell, or the orders there are. */
export const machineViews = ['soldOut', 'ordersLimited'] as const;
export type MachineView = (typeof machineViews)[number];

export const soldOutId = 'machine.soldOut';
export const priceId = 'product.price';
export const contributionId = 'product.contribution';

/** Quantities of a route, or of the difference: `<route>.machineEffect.<name>`. */
export const effectId = (routeId: string, name: string): string => `${routeId}.machineEffect.${name}`;
export const stepId = (routeId: string, view: MachineView, step: EffectStep): string =>
  effectId(routeId, `${view}.${step}`);
