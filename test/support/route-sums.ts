import type { RouteModel } from '../../src/paper/route.ts';
import type { Evaluation } from './evaluation.ts';

export function routeOf(evaluation: Evaluation, id: string): RouteModel {
  const found = evaluation.model.routes.find(({ plant }) => plant.route.id === id);
  if (found === undefined) throw new Error(`No route "${id}"`);
  return found;
}

/** Dry matter fed to all lines of a route, bdt/t. */
export function dryFeed(evaluation: Evaluation, route: string): number {
  return sumOverLines(evaluation, route, 'feed');
}

/** Stock that all lines bring to the blend chest, bdt/t. */
export function stockOf(evaluation: Evaluation, route: string): number {
  return sumOverLines(evaluation, route, 'stock');
}

/** Recovered paper or pulp as received for a tonne of product. */
export function boughtAsReceived(evaluation: Evaluation, route: string): number {
  return evaluation.sumOfPresent(evaluation.model.case.materials.map(({ id }) => `${route}.received.${id}`));
}

/** Dry mass of the streams named, bdt/t. */
export function residueDry(evaluation: Evaluation, route: string, streams: readonly string[]): number {
  return evaluation.sumOfPresent(streams.map((stream) => `${route}.residue.${stream}.dry`));
}

function sumOverLines(evaluation: Evaluation, route: string, what: 'feed' | 'stock'): number {
  return routeOf(evaluation, route).plant.lines.reduce((sum, { id }) => sum + evaluation.number(`${id}.${what}`), 0);
}
