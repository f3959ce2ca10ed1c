import { Failure } from '../kernel/evaluate/failure.ts';
import { type Graph, type Node, nodeNamed } from '../kernel/graph/graph.ts';
import { ingredients, madeOf, working } from '../kernel/graph/working.ts';
import { failureOrigin } from '../study/failure-origin.ts';
import type { OpenCase } from '../study/open-case.ts';
import { equation } from '../wording/equation.ts';
import { failureSentence } from '../wording/failure-sentence.ts';
import { formatNumber } from '../wording/number-format.ts';
import type { Explanation, Ingredient } from './explanation.ts';
import { inputView } from './input-view.ts';

/** How a figure was worked out; null where the case has no such figure. `locale` writes the numbers of the equation. */
export function explain(open: OpenCase, id: string, locale = 'en'): Explanation | null {
  const { graph } = open.model;
  if (!graph.positions.has(id)) return null;
  const step = stepOf(open, nodeNamed(graph, id), locale);
  const value = open.values.of(id);
  return {
    ...step,
    exact: open.values.exact(id),
    failure: value instanceof Failure ? failureSentence(originOf(graph, value), value.reason) : null,
    note: nodeNamed(graph, id).declaration?.note ?? step.input?.note ?? '',
    ingredients: ingredients(graph, id).map((node) => stepOf(open, node, locale)),
    goesInto: madeOf(graph, id).map((node) => ({
      id: node.declaration?.id ?? '',
      label: labelOf(node),
      where: node.declaration?.where ?? '',
    })),
  };
}

function stepOf(open: OpenCase, node: Node, locale: string): Ingredient {
  const { graph, inputs } = { graph: open.model.graph, inputs: open.model.graph.inputs };
  const id = node.declaration?.id ?? '';
  const input = inputs.find((each) => each.id === id);
  const steps = working(graph, id);
  return {
    id,
    label: labelOf(node),
    where: node.declaration?.where ?? '',
    value: open.values.number(id),
    unit: node.unit.text,
    words: input === undefined ? equation(steps, (part) => inSentence(labelOf(part))) : '',
    numbers: input === undefined ? equation(steps, (part) => numberOf(open, part, locale)) : '',
    input: input === undefined ? null : inputView(input),
  };
}

/** Inputs with all their digits, results with seven: enough to come true on a pocket calculator. */
function numberOf(open: OpenCase, node: Node, locale: string): string {
  const id = node.declaration?.id ?? '';
  return formatNumber(
    node.operation.op === 'input' ? open.values.exact(id) : open.values.number(id),
    node.operation.op === 'input' ? { locale } : { locale, significant: 7 },
  );
}

function labelOf(node: Node): string {
  return node.declaration?.label ?? '';
}

function inSentence(label: string): string {
  return /^\p{Lu}[\p{Lu}\d]/u.test(label) ? label : label.charAt(0).toLowerCase() + label.slice(1);
}

/** What a failure began in, and of what: a share or a rate is there many times over. */
function originOf(graph: Graph, { at }: Failure): string {
  const origin = failureOrigin(graph, at);
  if (origin === null) return 'A figure';
  return origin.where === undefined ? origin.label : `${origin.label} (${origin.where})`;
}
