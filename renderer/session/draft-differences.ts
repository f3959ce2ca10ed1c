/** How one case text differs from another: figures by input, and which other parts are not the same. */
export interface DraftDifferences {
  /** `before` or `after` is null where there is no such figure. */
  readonly figures: readonly { readonly id: string; readonly before: string | null; readonly after: string | null }[];
  readonly parts: readonly string[];
}

type Plain = Readonly<Record<string, unknown>>;

function plainOf(text: string): Plain | null {
  try {
    const value: unknown = JSON.parse(text);
    return isPlain(value) ? value : null;
  } catch {
    return null;
  }
}

function isPlain(value: unknown): value is Plain {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function figureOf(inputs: unknown, id: string): string | null {
  const given = isPlain(inputs) && Object.hasOwn(inputs, id) ? inputs[id] : undefined;
  if (!isPlain(given) || typeof given['value'] !== 'string') return null;
  return typeof given['unit'] === 'string' ? `${given['value']} ${given['unit']}`.trim() : given['value'];
}

function keysOf(...both: readonly unknown[]): readonly string[] {
  return [...new Set(both.flatMap((each) => (isPlain(each) ? Object.keys(each) : [])))];
}

/** Null where either is no case that can be compared. */
export function draftDifferences(before: string, after: string): DraftDifferences | null {
  const old = plainOf(before);
  const fresh = plainOf(after);
  if (old === null || fresh === null) return null;
  const changed = (one: unknown, other: unknown): boolean => JSON.stringify(one) !== JSON.stringify(other);
  const figures = keysOf(old['inputs'], fresh['inputs'])
    .map((id) => ({ id, before: figureOf(old['inputs'], id), after: figureOf(fresh['inputs'], id) }))
    .filter((figure) => figure.before !== figure.after);
  const parts = keysOf(old, fresh).filter((key) => key !== 'inputs' && changed(old[key], fresh[key]));
  return { figures, parts };
}
