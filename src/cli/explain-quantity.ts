import {
  type Explanation,
  type Ingredient,
  type OpenCase,
  explain,
  formatNumber,
  problemSentence,
  unitLabel,
} from '../index.ts';
import { nearest } from '../paper/nearest.ts';
import { openLot } from '../study/lots/open-lot.ts';
import { boundsPhrase } from '../wording/bounds-phrase.ts';
import { trueMinus } from '../wording/true-minus.ts';
import { type Console, Refusal } from './console.ts';
import { type SetOptions, openWithSets } from './open-with-sets.ts';

export interface ExplainOptions extends SetOptions {
  readonly json?: boolean;
  readonly lot?: string;
}

/** A working with its parts opened, down to the inputs; a part that was opened before is named only. */
interface OpenedWorking extends Omit<Explanation, 'ingredients'> {
  readonly parts: readonly (
    OpenedWorking | { readonly id: string; readonly label: string; readonly shownAbove: true }
  )[];
}

/** Shows how one figure was worked out: its equation in words and in numbers, its inputs and their sources down to the leaves. */
export function explainQuantity(console: Console, file: string, id: string, options: ExplainOptions): void {
  const asKept = openWithSets(file, options);
  const open = options.lot === undefined ? asKept : withLot(asKept, options.lot);
  const found = explain(open, id, console.locale);
  if (found === null) {
    const near = nearest(id, [...open.model.graph.positions.keys()]);
    throw new Refusal([
      `There is no figure "${id}" in this case${near.length === 0 ? '' : `; near to it are ${near.join(', ')}`}.`,
    ]);
  }
  const opened = openParts(open, found, console.locale, new Set());
  console.say(
    options.json === true ? `${JSON.stringify(opened, null, 2)}\n` : `${pageOf(opened, console.locale).join('\n')}\n`,
  );
}

function withLot(open: OpenCase, id: string): OpenCase {
  const offers = open.content.lots?.offers ?? [];
  const lot = offers.find((each) => each.id === id);
  if (lot === undefined) {
    const known = offers.length === 0 ? 'it has none' : `it has ${offers.map((each) => each.id).join(', ')}`;
    throw new Refusal([`There is no lot "${id}" in this case; ${known}.`]);
  }
  const opened = openLot(open, lot);
  if (opened === null) throw new Refusal([`The lot "${id}" has no price, or no line that it would feed.`]);
  if (!opened.ok) throw new Refusal(opened.problems.map(problemSentence));
  return opened.value;
}

function openParts(
  open: OpenCase,
  { ingredients, ...rest }: Explanation,
  locale: string,
  seen: Set<string>,
): OpenedWorking {
  seen.add(rest.id);
  return {
    ...rest,
    parts: ingredients.map((part: Ingredient) => {
      const inner = seen.has(part.id) ? null : explain(open, part.id, locale);
      return inner === null
        ? { id: part.id, label: part.label, shownAbove: true as const }
        : openParts(open, inner, locale, seen);
    }),
  };
}

function pageOf(working: OpenedWorking, locale: string, depth = 0): readonly string[] {
  const indent = '  '.repeat(depth);
  const value =
    working.failure ?? `${formatNumber(working.value, { locale, significant: 10 })} ${unitLabel(working.unit)}`.trim();
  const where = working.where === '' ? '' : ` (${working.where})`;
  const lines = [`${indent}${working.label}${where} = ${value}   [${working.id}]`];
  if (working.words !== '') lines.push(`${indent}  ${working.words}`, `${indent}  ${working.numbers}`);
  if (working.note !== '') lines.push(`${indent}  ${working.note}`);
  if (working.input !== null) lines.push(`${indent}  ${sourceOf(working.input)}`);
  for (const part of working.parts) {
    if ('shownAbove' in part) lines.push(`${indent}  ${part.label}: shown above   [${part.id}]`);
    else lines.push(...pageOf(part, locale, depth + 1));
  }
  return lines;
}

function sourceOf(input: NonNullable<Explanation['input']>): string {
  const withUnit = (figure: string): string => `${trueMinus(figure)} ${unitLabel(input.unit)}`.trim();
  const isRange = input.low !== null && input.high !== null && input.low !== input.high;
  const range = isRange ? ` Usual ${boundsPhrase({ least: input.low, most: input.high }, unitLabel(input.unit))}.` : '';
  const origin = input.touched
    ? `Given${input.usual === null ? '' : `; the default is ${trueMinus(input.usual)}`}`
    : 'Default';
  return `Input, ${withUnit(input.value)}. ${origin}. ${input.status}: ${input.source}.${range}${factsOf(input)}`;
}

/** What decides whether a carbon factor may stand beside another. */
function factsOf({ boundary, year, allocation, gwp }: NonNullable<Explanation['input']>): string {
  if (boundary === undefined) return '';
  const known = [
    `takes in ${boundary}`,
    ...(year === undefined ? [] : [`year ${year}`]),
    ...(allocation === undefined ? [] : [`allocation: ${allocation}`]),
    ...(gwp === undefined ? [] : [`warming potentials: ${gwp}`]),
  ];
  return ` Carbon factor; ${known.join('; ')}.`;
}
