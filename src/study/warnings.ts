import { Decimal } from '../kernel/evaluate/decimal-settings.ts';
import { Failure, type Reason } from '../kernel/evaluate/failure.ts';
import { nodeNamed } from '../kernel/graph/graph.ts';
import type { InputDeclaration } from '../kernel/graph/input-declaration.ts';
import { type ClaimCaution, claimCautions } from './claim-cautions.ts';
import { capitalStand } from './before-new-plant.ts';
import { type LimitReading, limitReadings } from './limits/limit-readings.ts';
import { failureOrigin } from './failure-origin.ts';
import { stageThatEmpties } from './emptied-line.ts';
import { type MachineCaution, machineCautions } from './machine-cautions.ts';
import { soldOutId } from '../paper/machine-effect/effect-ids.ts';
import type { OpenCase } from './open-case.ts';
import { type PriceCaution, priceCautions } from './price-cautions.ts';
import type { ProcessCaution } from './process-caution.ts';
import { processCautions } from './process-cautions.ts';
import { type FreshnessCaution, freshnessCautions } from './trust/freshness-cautions.ts';
import { type ComparedActual, type ReconciledRow, reconcile } from './trust/reconcile.ts';

/** Something to look at: none of it stops a calculation. Sentences are made in wording. */
export type Caution =
  | ProcessCaution
  | ClaimCaution
  | FreshnessCaution
  | PriceCaution
  | { readonly kind: 'wide gap'; readonly about: string; readonly row: ReconciledRow; readonly actual: ComparedActual }
  | MachineCaution
  | {
      readonly kind: 'unusual figure';
      readonly about: string;
      readonly input: InputDeclaration;
      readonly given: string;
    }
  | { readonly kind: 'before new plant'; readonly about: string; readonly route: string }
  | { readonly kind: 'limit broken'; readonly about: string; readonly reading: LimitReading }
  | {
      readonly kind: 'set aside';
      readonly about: string;
      readonly label: string;
      readonly where: string;
      readonly given: string;
    }
  | { readonly kind: 'no contingency'; readonly about: string }
  | { readonly kind: 'not all written off'; readonly about: string; readonly percent: number }
  | { readonly kind: 'effluent below nothing'; readonly about: string; readonly route: string; readonly value: string }
  | {
      readonly kind: 'unpriced additive';
      readonly about: string;
      readonly route: string;
      readonly place: 'wet end' | 'surface';
    }
  | {
      readonly kind: 'no figure';
      readonly about: string;
      readonly label: string;
      readonly where: string;
      readonly unit: string;
    }
  | {
      readonly kind: 'cannot be worked out';
      readonly about: string;
      readonly label: string;
      readonly where: string;
      readonly reason: Reason;
      /** The stage of a line after which nothing is left, where that is why. */
      readonly emptiedBy?: string;
    };

/** `today` is a day such as "2026-11-25"; without it nothing is said about ages. */
export function cautionsOf(open: OpenCase, today: string | null = null): readonly Caution[] {
  return [
    ...gaps(open),
    ...failures(open),
    ...priceCautions(open),
    ...freshnessCautions(open, today),
    ...wideGaps(open),
    ...newPlant(open),
    ...brokenLimits(open),
    ...noContingency(open),
    ...notAllWrittenOff(open),
    ...setAside(open),
    ...unusualFigures(open),
    ...effluents(open),
    ...unpricedAdditives(open),
    ...processCautions(open),
    ...machineCautions(open),
    ...claimCautions(open),
  ];
}

/** What was measured lies far from what is computed: the model has not been made to agree, and says so. */
function wideGaps(open: OpenCase): readonly Caution[] {
  return reconcile(open).flatMap(({ rows }) =>
    rows.flatMap((row): readonly Caution[] =>
      row.actual?.isWide === true ? [{ kind: 'wide gap', about: row.result, row, actual: row.actual }] : [],
    ),
  );
}

/** A difference that no people, maintenance or capital weigh on is no answer to an investor. */
function brokenLimits(open: OpenCase): readonly Caution[] {
  return limitReadings(open).flatMap((reading): readonly Caution[] =>
    reading.kept || Number.isNaN(reading.value) ? [] : [{ kind: 'limit broken', about: reading.resultId, reading }],
  );
}

/** A table of writing off that leaves something over, or takes more than there is. */
function notAllWrittenOff({ content, model }: OpenCase): readonly Caution[] {
  if (content.investment?.depreciation !== 'table') return [];
  const shares = model.graph.inputs.filter(({ id }) => id.startsWith('investment.writtenOff.'));
  const percent = shares.reduce((sum, { given }) => sum + Number(given?.value ?? 0), 0);
  const about = shares[0]?.id ?? 'investment.writeOffYears';
  return Math.abs(percent - 100) < 1e-6 ? [] : [{ kind: 'not all written off', about, percent }];
}

/** A plan that takes its estimate for what will be spent. */
function noContingency({ content, values }: OpenCase): readonly Caution[] {
  const about = 'investment.contingency';
  return content.investment !== undefined && values.number(about) === 0 ? [{ kind: 'no contingency', about }] : [];
}

/** Figures that a person gave for what the case now works out: they are kept, and do nothing. */
function setAside({ content, model }: OpenCase): readonly Caution[] {
  return Object.entries(content.inputs).flatMap(([id, { value }]): Caution[] => {
    if (!model.workedOut.has(id)) return [];
    const { label, where = '' } = nodeNamed(model.graph, id).declaration ?? { label: id };
    return [{ kind: 'set aside', about: id, label, where, given: value }];
  });
}

function newPlant(open: OpenCase): readonly Caution[] {
  if (capitalStand(open) !== 'before new plant') return [];
  const id = open.content.compare.with;
  const route = open.content.routes.find((each) => each.id === id)?.label ?? id;
  return [{ kind: 'before new plant', about: `${id}.labour`, route }];
}

function gaps({ gaps: found, model }: OpenCase): readonly Caution[] {
  return found.flatMap((gap): Caution[] => {
    if (gap.kind !== 'no figure') return [];
    const where = model.graph.inputs.find((input) => input.id === gap.id)?.where ?? '';
    return [{ kind: 'no figure', about: gap.id, label: gap.label, where, unit: gap.unit }];
  });
}

/**
 * Where failures of named quantities began, each once; a missing figure is told as a gap. A step without a name may fail unnoticed: it
 * can stand in the branch of a choice that is not taken.
 */
function failures(open: OpenCase): readonly Caution[] {
  const { model, values } = open;
  const origins = new Map<number, Failure>();
  for (const node of model.graph.nodes) {
    if (node.declaration === null) continue;
    const value = values.at(node);
    if (value instanceof Failure && value.reason.kind !== 'no value given') origins.set(value.at, value);
  }
  return [...origins.values()].flatMap(({ at, reason }): readonly Caution[] => {
    const named = failureOrigin(model.graph, at);
    // Orders that cannot be made are none of the business of a machine that is sold out.
    if (values.number(soldOutId) > 0.5 && named?.id.endsWith('.machineEffect.hoursLeft') === true) return [];
    const emptiedBy = stageThatEmpties(open, named?.id ?? '');
    return [
      {
        kind: 'cannot be worked out',
        about: named?.id ?? '',
        label: named?.label ?? 'A figure',
        where: named?.where ?? '',
        reason,
        ...(emptiedBy === undefined ? {} : { emptiedBy }),
      },
    ];
  });
}

function unusualFigures({ model }: OpenCase): readonly Caution[] {
  return model.graph.inputs.flatMap((input): Caution[] => {
    const { low, high } = input.usual;
    if (
      input.given === null ||
      low === null ||
      high === null ||
      input.usual.provenance.status === 'none' ||
      low === high
    )
      return [];
    const given = new Decimal(input.given.value);
    const usual = given.greaterThanOrEqualTo(low) && given.lessThanOrEqualTo(high);
    return usual ? [] : [{ kind: 'unusual figure', about: input.id, input, given: input.given.value }];
  });
}

function effluents({ content, values }: OpenCase): readonly Caution[] {
  return content.routes.flatMap((route): Caution[] => {
    const id = `${route.id}.water.effluent`;
    if (!values.has(id) || !(values.number(id) < 0)) return [];
    return [{ kind: 'effluent below nothing', about: id, route: route.label, value: values.exact(id) }];
  });
}

/** Additives that the machine adds and no additive of the route stands for: they would be free. */
function unpricedAdditives({ content, values }: OpenCase): readonly Caution[] {
  const places = [
    ['wet end', 'wetEndAdditives'],
    ['surface', 'surfaceAdditives'],
  ] as const;
  return content.routes.flatMap((route) =>
    places.flatMap(([place, name]): Caution[] => {
      const id = `${route.id}.machine.${name}`;
      const isMissing = values.number(id) > 0 && !route.additives.some((additive) => additive.place === place);
      return isMissing ? [{ kind: 'unpriced additive', about: id, route: route.label, place }] : [];
    }),
  );
}
