import type { Quantity } from '../../kernel/expression/quantity.ts';
import type { StageEntry } from '../catalogue.ts';
import { type Component, componentLabels, flowOf, followsWater } from '../components.ts';
import { type Sheet, fraction } from '../sheet.ts';
import { cascade } from './cascade.ts';
import { type Level, levelsOf } from './cascade-levels.ts';
import { exponentOf } from './plug-flow-exponent.ts';
import { plugFlowRemoval, quotientRemoval } from './screening-laws.ts';
import type { Separation } from './removal.ts';
import type { StagePlace } from './stage-place.ts';

/** What one component does in the single stages of a cascade: its name for ids and labels, and its reject ratio at each. */
interface Parting {
  readonly name: string;
  readonly label: string;
  readonly rates: readonly Quantity[];
}

const water: Omit<Parting, 'rates'> = { name: 'water', label: 'What follows the water' };
const fibre: Omit<Parting, 'rates'> = { name: 'fibre', label: 'Fibre and what follows it' };

/** Removal of a cascade of screens or cleaners, each component by its own law in every single stage. */
export function cascadeSeparation(sheet: Sheet, place: StagePlace, entry: StageEntry): Separation {
  const levels = levelsOf(sheet, place, entry);
  const forward = levels.map((_, k) => place.stage.forward?.includes(k + 1) ?? false);
  const done = new Map<string, { readonly label: string; readonly loss: Quantity }>();
  const lossOf = ({ name, label, rates }: Parting): Quantity => {
    const known = done.get(name);
    if (known !== undefined) return known.loss;
    const { loss, feeds } = cascade(rates, forward);
    const more = { where: place.where, shownIn: '%' };
    const named = sheet.define(`${place.id}.loss.${name}`, `${label}, share that leaves the cascade`, '1', loss, more);
    feeds.forEach((feed, k) => {
      const id = `${place.id}.level.${String(k + 1)}`;
      sheet.define(`${id}.feed.${name}`, `${label}, gross feed of stage ${String(k + 1)}`, '1', feed, {
        where: place.where,
        note: 'Per unit fed to the cascade, what comes back included.',
      });
      const rate = rates[k];
      if (rate !== undefined && name !== 'fibre')
        sheet.define(`${id}.rejects.${name}`, `${label}, rejected by stage ${String(k + 1)}`, '1', rate, more);
    });
    done.set(name, { label, loss: named });
    return named;
  };
  const removal = flowOf((component) => lossOf(partingOf(sheet, place, entry, component, levels)));
  return { removal, cascade: { forward, partings: [...done].map(([name, { label }]) => ({ name, label })) } };
}

function partingOf(
  sheet: Sheet,
  place: StagePlace,
  entry: StageEntry,
  component: Component,
  levels: readonly Level[],
): Parting {
  // The reject rate of the fibre is what the stage is set by: it is given, never worked out from a law of its own.
  if (component === 'fibre') return { ...fibre, rates: levels.map((level) => level.rejectRate) };
  const own = { name: component, label: componentLabels[component] };
  const efficiency = spec(place, 'efficiency', component, 'share rejected by each stage', {
    entry: '%',
    allowed: fraction,
  });
  if (sheet.has(efficiency)) {
    const given = sheet.input(efficiency);
    return { ...own, rates: levels.map(() => given) };
  }
  if (place.stage.law === 'plug flow') {
    const exponent = exponentOf(sheet, place, component);
    return { ...own, rates: levels.map((level) => plugFlowRemoval(level.volumeRejectRate, exponent)) };
  }
  const quotient = spec(place, 'quotient', component, 'separation quotient', {
    figure: entry.cascade?.quotient[component],
    allowed: { below: '1' },
  });
  if (sheet.has(quotient)) {
    const given = sheet.input(quotient);
    return { ...own, rates: levels.map((level) => quotientRemoval(level.rejectRate, given)) };
  }
  if (followsWater.has(component)) return { ...water, rates: levels.map((level) => level.volumeRejectRate) };
  return { ...fibre, rates: levels.map((level) => level.rejectRate) };
}

function spec<More extends object>(place: StagePlace, what: string, component: Component, label: string, more: More) {
  return {
    id: `${place.id}.${what}.${component}`,
    label: `${componentLabels[component]}: ${label}`,
    where: place.where,
    unit: '1',
    ...more,
  };
}
