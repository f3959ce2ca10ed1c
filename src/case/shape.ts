import type { Problem } from './problem.ts';
import { caseSchema } from './schema.ts';

/** What a schema says about keys and nesting: all that is needed to walk a case file beside it. */
interface Shape {
  readonly type: string;
  readonly entries?: Readonly<Record<string, Shape>>;
  readonly item?: Shape;
  readonly wrapped?: Shape;
  readonly value?: Shape;
}

const caseShape: Shape = caseSchema;
// Keys that JavaScript itself gives a meaning to: harmless as JSON has them, and never meant.
const dangerousKeys: ReadonlySet<string> = new Set(['__proto__', 'constructor', 'prototype']);

/** Keys that a case has no place for, all of them, and lists where a group of named things is wanted. */
export function findShapeProblems(content: unknown): Problem[] {
  const problems: Problem[] = [];
  walk(caseShape, content, '', problems);
  return problems;
}

function walk(shape: Shape, value: unknown, path: string, problems: Problem[]): void {
  if (shape.wrapped !== undefined) walk(shape.wrapped, value, path, problems);
  if (Array.isArray(value)) {
    if (shape.entries !== undefined || shape.type === 'record')
      problems.push({ kind: 'wrong form', path, given: 'a list', allowed: 'a group of named values in braces' });
    else value.forEach((each: unknown, place) => walkInto(shape.item, each, below(path, String(place)), problems));
  } else if (typeof value === 'object' && value !== null) {
    for (const [key, inner] of Object.entries(value)) {
      const allowed = shapeUnder(shape, key);
      if (allowed === null) problems.push({ kind: 'unknown key', path: below(path, key) });
      else walkInto(allowed, inner, below(path, key), problems);
    }
  }
}

function walkInto(shape: Shape | undefined, value: unknown, path: string, problems: Problem[]): void {
  if (shape !== undefined) walk(shape, value, path, problems);
}

/** What may stand under a key; null where nothing may, undefined where the schema itself refuses the whole value. */
function shapeUnder(shape: Shape, key: string): Shape | null | undefined {
  if (dangerousKeys.has(key)) return null;
  if (shape.entries === undefined) return shape.value;
  return Object.hasOwn(shape.entries, key) ? shape.entries[key] : null;
}

function below(path: string, key: string): string {
  return path === '' ? key : `${path}.${key}`;
}

/** The same content with the keys of every group in the order of the schema, and those of inputs in the order of the alphabet. */
export function inSchemaOrder(content: object): unknown {
  return ordered(caseShape, content);
}

function ordered(shape: Shape | undefined, value: unknown): unknown {
  const known = shape?.wrapped ?? shape;
  if (Array.isArray(value)) return value.map((each) => ordered(known?.item, each));
  if (typeof value !== 'object' || value === null) return value;
  const entries = new Map<string, unknown>(Object.entries(value));
  const keys = known?.entries === undefined ? [...entries.keys()].sort() : Object.keys(known.entries);
  return Object.fromEntries(
    keys
      .filter((key) => entries.has(key))
      .map((key) => [key, ordered(known?.entries?.[key] ?? known?.value, entries.get(key))]),
  );
}
