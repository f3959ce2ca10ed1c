import type { Bounds } from '../kernel/expression/operation.ts';

/**
 * Everything that can be wrong with what a person gives: a closed union. Sentences for it are made in one place
 * (wording/problem-sentence.ts), which does not compile while one is missing.
 */
export type Problem =
  | { readonly kind: 'not text'; readonly detail: string }
  | { readonly kind: 'too large'; readonly bytes: number; readonly most: number }
  | { readonly kind: 'too deep'; readonly most: number }
  | { readonly kind: 'not a case'; readonly given: string }
  | { readonly kind: 'newer version'; readonly given: string; readonly known: number }
  | { readonly kind: 'unknown key'; readonly path: string }
  | { readonly kind: 'missing'; readonly path: string }
  | { readonly kind: 'wrong form'; readonly path: string; readonly given: string; readonly allowed: string }
  | { readonly kind: 'said twice'; readonly path: string; readonly given: string }
  | {
      readonly kind: 'unknown reference';
      readonly path: string;
      readonly given: string;
      readonly what: string;
      readonly known: readonly string[];
    }
  | { readonly kind: 'unknown input'; readonly id: string; readonly near: readonly string[] }
  | { readonly kind: 'worked out'; readonly id: string }
  | { readonly kind: 'not a number'; readonly id: string; readonly given: string }
  | { readonly kind: 'which ton'; readonly id: string; readonly given: string }
  | {
      readonly kind: 'wrong unit';
      readonly id: string;
      readonly label: string;
      readonly given: string;
      readonly wanted: string;
    }
  | {
      readonly kind: 'outside';
      readonly id: string;
      readonly label: string;
      readonly given: string;
      readonly unit: string;
      readonly allowed: Bounds;
    }
  | { readonly kind: 'no source'; readonly id: string; readonly label: string }
  | {
      readonly kind: 'wrong boundary';
      readonly id: string;
      readonly label: string;
      readonly given: string;
      readonly wanted: string;
    }
  | {
      readonly kind: 'wrong allocation';
      readonly id: string;
      readonly label: string;
      readonly given: string;
      readonly wanted: string;
    }
  /** A year of the investment plan in which no destination takes a residue stream. */
  | { readonly kind: 'no outlet open'; readonly stream: string; readonly year: string }
  | { readonly kind: 'no figure'; readonly id: string; readonly label: string; readonly unit: string };

/** Either a result, or all that is wrong at once. */
export type Outcome<Value> =
  | { readonly ok: true; readonly value: Value }
  | { readonly ok: false; readonly problems: readonly [Problem, ...Problem[]] };

export function outcome<Value>(value: Value, problems: readonly Problem[]): Outcome<Value> {
  const [first, ...rest] = problems;
  return first === undefined ? { ok: true, value } : { ok: false, problems: [first, ...rest] };
}
