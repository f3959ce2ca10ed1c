import type { InvestmentPlan } from '../../case/investment-plan.ts';
import { balanceOf, openTo, shareStem } from '../../paper/outlet-years.ts';
import type { OpenCase } from '../open-case.ts';

/** A place that can take a stream, and in which years of the plan a share can be given for it. */
export interface PlanOutlet {
  /** "residue.coarse.to.boiler": the input of year 6 is "investment.residue.coarse.to.boiler.6". */
  readonly stem: string;
  readonly label: string;
  /** By year: whether it is open then, and does not take what the others leave. */
  readonly takesShare: readonly boolean[];
}

export interface PlanResidues {
  readonly outlets: readonly PlanOutlet[];
  readonly destinations: readonly { readonly id: string; readonly label: string }[];
  /** Shares that hold from a year on, in per cent, in words of their inputs. */
  readonly shares: readonly { readonly id: string; readonly label: string; readonly percent: number }[];
}

export function planResidues({ content, model }: OpenCase, plan: InvestmentPlan): PlanResidues {
  const routes = model.routes.filter(({ plant }) => [plan.from, plan.to].includes(plant.route.id));
  const streams = new Map(routes.flatMap(({ residues }) => residues.map(({ stream, label }) => [stream, label])));
  const years = Array.from({ length: plan.years + 1 }, (_, year) => year);
  const outlets = [...streams].flatMap(([stream, label]) => {
    const mayBurn = stream !== 'ash';
    const open = years.map((year) => openTo(content, mayBurn, year));
    const balances = open.map((each) => balanceOf(stream, each));
    return openTo(content, mayBurn).map((destination): PlanOutlet => ({
      stem: shareStem(stream, destination.id),
      label: `${label} to ${destination.label.toLowerCase()}`,
      takesShare: years.map((year) => open[year]?.includes(destination) === true && balances[year] !== destination),
    }));
  });
  return {
    outlets: outlets.filter(({ takesShare }) => takesShare.some(Boolean)),
    destinations: content.destinations.map(({ id, label }) => ({ id, label })),
    shares: model.graph.inputs
      .filter(({ id }) => id.startsWith('investment.residue.'))
      .map(({ id, label, given }) => ({ id, label, percent: Number(given?.value ?? NaN) })),
  };
}
