import { kindOfLines } from '../case/route-kind.ts';
import { accountIdOf, accountPerYearIdOf, accounts } from '../paper/accounts.ts';
import type { RouteModel } from '../paper/route.ts';
import { wasteCodeOf } from '../paper/waste-codes.ts';
import { type MarginalPower, marginalPower } from './marginal-power.ts';
import type { OpenCase } from './open-case.ts';
import type { Values } from './values.ts';
import { waterIdsOf } from './water-ids.ts';

/** Money per tonne of product and per year, as numbers and with every digit. NaN and "" where it cannot be worked out. */
export interface Money {
  readonly perTonne: number;
  readonly perYear: number;
  readonly perTonneExact: string;
  readonly perYearExact: string;
}

export interface AccountMoney extends Money {
  readonly id: string;
  readonly label: string;
}

/** One route as it is reported. Energy per tonne of product; masses in tonnes per tonne of product. */
export interface RouteComparison {
  readonly id: string;
  readonly label: string;
  readonly accounts: readonly AccountMoney[];
  readonly totals: {
    readonly costPerTonne: number;
    readonly costPerYear: number;
    readonly costPerTonneExact: string;
    readonly costPerYearExact: string;
    readonly costPerTonneWithoutPolicy: number;
  };
  readonly energy: { readonly electricity: number; readonly heat: number };
  readonly lines: readonly {
    readonly id: string;
    readonly label: string;
    readonly yield: number;
    readonly fibreYield: number;
    readonly feed: number;
    readonly stock: number;
  }[];
  readonly residues: readonly {
    readonly stream: string;
    readonly label: string;
    /** "" where no code is usual and none is given. */
    readonly wasteCode: string;
    readonly dry: number;
    readonly wet: number;
    readonly destination: readonly { readonly id: string; readonly label: string; readonly wet: number }[];
  }[];
  readonly purchased: readonly {
    readonly material: string;
    readonly label: string;
    readonly boneDry: number;
    readonly asReceived: number;
  }[];
  readonly water: { readonly fresh: number; readonly effluent: number };
}

export interface Comparison {
  readonly product: { readonly name: string; readonly moisture: number; readonly tonnesPerYear: number };
  readonly currency: string;
  readonly priceYear: string;
  readonly routes: readonly RouteComparison[];
  /** Recovered less virgin, or whichever routes the case compares: the second less the first. */
  readonly difference: Money & {
    readonly base: string;
    readonly with: string;
    readonly accounts: readonly AccountMoney[];
    /** Where the case has a marginal price of power: the same difference with its electricity at that price, beside the sum. */
    readonly atMarginalPower?: MarginalPower;
  };
}

/** Everything about the routes of a case, side by side. */
export function compare(open: OpenCase): Comparison {
  const { content, model, values } = open;
  const { baseId, withId, totalId, totalPerYearId } = model.difference;
  const atMargin = marginalPower(open);
  return {
    product: {
      name: content.product.name,
      moisture: values.number('product.moisture'),
      tonnesPerYear: values.number('product.tonnes'),
    },
    currency: content.currency,
    priceYear: content.priceYear,
    routes: model.routes.map((route) => routeComparison(open, route)),
    difference: {
      base: baseId,
      with: withId,
      ...money(values, totalId, totalPerYearId),
      accounts: accountMoney(values, 'difference'),
      ...(atMargin === null ? {} : { atMarginalPower: atMargin }),
    },
  };
}

function money(values: Values, perTonneId: string, perYearId: string): Money {
  return {
    perTonne: values.number(perTonneId),
    perYear: values.number(perYearId),
    perTonneExact: values.exact(perTonneId),
    perYearExact: values.exact(perYearId),
  };
}

function accountMoney(values: Values, routeId: string): readonly AccountMoney[] {
  return accounts.map(({ id, label }) => ({
    id,
    label,
    ...money(values, accountIdOf(routeId, id), accountPerYearIdOf(routeId, id)),
  }));
}

function routeComparison({ content, values }: OpenCase, { plant, statement, residues }: RouteModel): RouteComparison {
  const { id, label } = plant.route;
  const whole = money(values, statement.totalId, statement.totalPerYearId);
  const { freshId, effluentId } = waterIdsOf(id);
  const kind = kindOfLines(plant.route.lines, content.materials);
  return {
    id,
    label,
    accounts: accountMoney(values, id),
    totals: {
      costPerTonne: whole.perTonne,
      costPerYear: whole.perYear,
      costPerTonneExact: whole.perTonneExact,
      costPerYearExact: whole.perYearExact,
      costPerTonneWithoutPolicy: values.number(statement.withoutPolicyId),
    },
    energy: {
      electricity: values.number(`${id}.electricity.total`),
      heat: values.number(`${id}.heat.total`),
    },
    lines: plant.lines.map((line) => ({
      id: line.id,
      label: line.label,
      yield: values.number(`${line.id}.yield`),
      fibreYield: values.number(`${line.id}.fibreYield`),
      feed: values.number(`${line.id}.feed`),
      stock: values.number(`${line.id}.stock`),
    })),
    residues: residues.map((residue) => ({
      stream: residue.stream,
      label: residue.label,
      wasteCode: wasteCodeOf(residue.stream, kind, content.wasteCodes)?.code ?? '',
      dry: values.number(`${id}.residue.${residue.stream}.dry`),
      wet: values.number(`${id}.residue.${residue.stream}.wet`),
      destination: residue.parts.map((part) => ({
        id: part.destination.id,
        label: part.destination.label,
        wet: values.number(`${id}.residue.${residue.stream}.wet.${part.destination.id}`),
      })),
    })),
    purchased: content.materials
      .filter((material) => values.has(`${id}.bought.${material.id}`))
      .map((material) => ({
        material: material.id,
        label: material.label,
        boneDry: values.number(`${id}.bought.${material.id}`),
        asReceived: values.number(`${id}.received.${material.id}`),
      })),
    water: { fresh: values.number(freshId), effluent: values.number(effluentId) },
  };
}
