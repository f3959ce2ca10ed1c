import type { Quantity } from '../../kernel/expression/quantity.ts';
import { type StageEntry, type StageKind, chemicalEntries } from '../catalogue.ts';
import { type Component, type Flow, componentLabels, flowOf, massOf } from '../components.ts';
import { type Sheet, notNegative } from '../sheet.ts';
import { clarifierChemical, clarifierOf } from './clarifier.ts';
import { electricityOf } from './demand.ts';
import { heatOf } from './heat.ts';
import type { CascadeShape } from './removal.ts';
import { separationOf } from './separation.ts';
import type { StagePlace } from './stage-place.ts';
import { movesOf, transformed } from './transform.ts';

/** What one stage does with one bone-dry tonne fed to its line. */
export interface StageResult {
  readonly id: string;
  readonly label: string;
  readonly kind: StageKind;
  /** Dry mass that enters, per bdt fed to the line. */
  readonly feedMass: Quantity;
  readonly accepts: Flow;
  /** What goes on of any flow that enters: the stage is linear, so grades can be followed one by one. */
  readonly pass: (flow: Flow) => Flow;
  /** What leaves, per component; the stream that takes it stands in `streamOf`. */
  readonly rejects: Flow;
  readonly streamOf: (component: keyof Flow) => string;
  readonly cascade: CascadeShape | null;
  /** Per bdt that enters the stage. */
  readonly electricity: Quantity;
  readonly heat: Quantity;
  /** Steam that condenses in the stock, m3 per bdt that enters. */
  readonly condensate: Quantity;
  readonly doses: readonly { readonly chemical: string; readonly dose: Quantity }[];
}

/** A stage transforms, then separates: accepts = (1 - E)(T feed). Demands are per bone-dry tonne that enters from the stage before. */
export function stageOf(sheet: Sheet, place: StagePlace, entry: StageEntry, feed: Flow): StageResult {
  const feedMass = sheet.define(`${place.id}.feed`, 'Enters the stage, per tonne fed to the line', '1', massOf(feed), {
    where: place.where,
  });
  const clarifier = clarifierOf(sheet, place, entry);
  const moves = movesOf(sheet, place, entry);
  const turned = transformed(moves, feed);
  const { removal, cascade } = separationOf(sheet, place, entry);
  const named = (what: string, verb: string, component: Component, quantity: Quantity): Quantity =>
    quantity.operation.op === 'constant'
      ? quantity
      : sheet.define(`${place.id}.${what}.${component}`, `${componentLabels[component]} ${verb}`, '1', quantity, {
          where: place.where,
        });
  const rejects = flowOf((component) =>
    named('rejects', 'that leaves here', component, turned[component].times(removal[component])),
  );
  const accepts = flowOf((component) =>
    named('accepts', 'that goes on', component, turned[component].minus(rejects[component])),
  );
  const stream =
    place.stage.filtrate === 'effluent' && entry.washer !== undefined ? 'effluent' : (entry.stream ?? 'coarse');
  return {
    id: place.id,
    label: place.stage.label ?? entry.label,
    kind: entry.kind,
    feedMass,
    accepts,
    pass: (flow) => {
      const own = transformed(moves, flow);
      return flowOf((component) => own[component].times(removal[component].complement()));
    },
    rejects,
    streamOf: (component) => entry.streams?.[component] ?? stream,
    cascade,
    electricity: electricityOf(sheet, place, entry, feedMass).plus(clarifier.electricity),
    ...heatOf(sheet, place, entry),
    doses: [
      ...dosesOf(sheet, place, entry),
      ...(clarifier.polymer === null ? [] : [{ chemical: clarifierChemical, dose: clarifier.polymer }]),
    ],
  };
}

function dosesOf(sheet: Sheet, place: StagePlace, entry: StageEntry): StageResult['doses'] {
  const listed = [...chemicalEntries].map(([id, { label }]) => ({ id, label }));
  const chemicals = [...listed, ...sheet.case.chemicals.filter(({ id }) => !chemicalEntries.has(id))];
  return chemicals.flatMap(({ id, label }) => {
    const spec = {
      id: `${place.id}.dose.${id}`,
      label: `${label}, active`,
      where: place.where,
      unit: 'kg/bdt',
      figure: entry.doses?.[id],
      allowed: notNegative,
    };
    return sheet.has(spec) ? [{ chemical: id, dose: sheet.input(spec) }] : [];
  });
}
