import type { Problem } from '../case/problem.ts';
import { Failure } from '../kernel/evaluate/failure.ts';
import { inForce } from '../kernel/graph/input-declaration.ts';
import { priceId, soldOutId } from '../paper/machine-effect/effect-ids.ts';
import type { Model } from '../paper/model.ts';
import { failureOrigin } from './failure-origin.ts';
import type { Values } from './values.ts';

/** What limits the machine is one of two; a figure between them would mean neither. */
export function switchProblems({ graph }: Model): readonly Problem[] {
  const given = graph.inputs.find(({ id }) => id === soldOutId)?.given?.value;
  if (given === undefined || Number(given) === 0 || Number(given) === 1) return [];
  return [{ kind: 'wrong form', path: soldOutId, given, allowed: '1 (sold out) or 0 (orders limited)' }];
}

/**
 * A machine that is sold out loses tonnes, and nobody has said what one is worth. Only then is a price of the product missing; everywhere
 * else a case does without.
 */
export function priceGaps({ graph, routes }: Model, values: Values): readonly Problem[] {
  const price = graph.inputs.find(({ id }) => id === priceId);
  if (price === undefined || inForce(price) !== null) return [];
  const isMissed = routes.some(({ statement }) => {
    const total = values.of(statement.totalId);
    return total instanceof Failure && failureOrigin(graph, total.at)?.id === priceId;
  });
  return isMissed ? [{ kind: 'no figure', id: priceId, label: price.label, unit: price.entryUnit }] : [];
}
