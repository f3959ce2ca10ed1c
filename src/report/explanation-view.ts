import type { DecimalOutcome } from '../kernel/evaluate/decimal.ts';
import { Failure } from '../kernel/evaluate/failure.ts';
import { type Graph, type Node, nodeNamed } from '../kernel/graph/graph.ts';
import { type Working, ingredients, madeOf, working } from '../kernel/graph/working.ts';
import { failureOrigin } from '../study/failure-origin.ts';
import { furtherBeside } from '../study/further-figures.ts';
import type { OpenCase } from '../study/open-case.ts';
import { equation } from '../wording/equation.ts';
import { failureSentence } from '../wording/failure-sentence.ts';
import { inSentence } from '../wording/in-sentence.ts';
import { formatNumber } from '../wording/number-format.ts';
import type { Explanation, Ingredient } from './explanation.ts';
import { inputView } from './input-view.ts';
import { isOnlyRounding } from './only-rounding.ts';
import { workingDigits } from './working-digits.ts';

/** How a figure was worked out; null where the case has no such figure. `locale` writes the numbers of the equation. */
export function explain(open: OpenCase, id: string, locale = 'en'): Explanation | null {
  const { graph } = open.model;
  if (!graph.positions.has(id)) return null;
  const step = stepOf(open, nodeNamed(graph, id), locale);
  const value = open.values.of(id);
  const parts = ingredients(graph, id);
  return {
    ...step,
    exact: open.values.exact(id),
    failure: value instanceof Failure ? whyNot(graph, value) : null,
    note: nodeNamed(graph, id).declaration?.note ?? step.input?.note ?? '',
    further: furtherBeside(open, [id, ...parts.map((node) => node.declaration?.id ?? '')]),
    ingredients: parts.map((node) => stepOf(open, node, locale)),
    goesInto: madeOf(graph, id).map((node) => ({
      id: node.declaration?.id ?? '',
      label: labelOf(node),
      where: node.declaration?.where ?? '',
    })),
  };
}

function stepOf(open: OpenCase, node: Node, locale: string): Ingredient {
  const { graph } = open.model;
  const id = node.declaration?.id ?? '';
  const input = graph.inputs.find((each) => each.id === id);
  const steps = working(graph, id);
  const valueOf = (part: Node): number => sizeOf(open.values.at(part));
  return {
    id,
    label: labelOf(node),
    where: node.declaration?.where ?? '',
    value: isOnlyRounding(steps, valueOf) ? 0 : valueOf(node),
    unit: node.unit.text,
    words: inWords(steps, locale),
    numbers: inNumbers(open, steps, locale),
    input: input === undefined ? null : inputView(input),
  };
}

function inWords(steps: Working, locale: string): string {
  if (steps.kind === 'fixed') return steps.digits === '0' ? 'nothing: no part of it is there' : 'fixed by definition';
  const names = namesIn(steps).map(labelOf);
  // Two parts of one name, such as the whole cost of either route, are told apart by what they belong to.
  const isTwice = (label: string): boolean => names.indexOf(label) !== names.lastIndexOf(label);
  return equation(steps, {
    named: (node) => {
      const label = labelOf(node);
      const where = node.declaration?.where;
      return isTwice(label) && where !== undefined ? `${inSentence(label)} (${where})` : inSentence(label);
    },
    fixed: (digits) => formatNumber(digits, { locale }),
  });
}

/** The named parts of a working, each once. */
function namesIn(steps: Working): readonly Node[] {
  const found = new Set<Node>();
  const visit = (step: Working): void => {
    if (step.kind === 'named') found.add(step.node);
    if (step.kind === 'made') step.of.forEach(visit);
  };
  visit(steps);
  return [...found];
}

/** Inputs and fixed numbers with all their digits, results with enough to come true on a pocket calculator. */
function inNumbers({ values }: OpenCase, steps: Working, locale: string): string {
  const significant = workingDigits(steps, (node) => sizeOf(values.at(node)));
  return equation(steps, {
    named: (node) => {
      const value = values.at(node);
      const isGiven = node.operation.op === 'input' && !(value instanceof Failure);
      return isGiven
        ? formatNumber(value.toString(), { locale })
        : formatNumber(sizeOf(value), { locale, significant });
    },
    fixed: (digits) => formatNumber(digits, { locale }),
  });
}

function sizeOf(value: DecimalOutcome): number {
  return value instanceof Failure ? NaN : value.toNumber();
}

function labelOf(node: Node): string {
  return node.declaration?.label ?? '';
}

/** What a failure began in, and of what: a share or a rate is there many times over. */
function whyNot(graph: Graph, { at, reason }: Failure): string {
  const origin = failureOrigin(graph, at);
  if (origin === null) return failureSentence('A figure', reason);
  const name = origin.where === undefined ? origin.label : `${origin.label} (${origin.where})`;
  return failureSentence(name, reason, origin.id);
}
