import * as v from 'valibot';

/** Letters of which the name of a draft's file is made. */
export const draftId = v.pipe(v.string(), v.regex(/^[0-9a-f]{16}$/u));

const schema = v.strictObject({
  draft: v.literal(1),
  id: draftId,
  /** When it was kept: milliseconds since 1970. */
  at: v.pipe(v.number(), v.finite()),
  title: v.string(),
  /** The file that the work began from, and its content then; null where there was none. */
  base: v.nullable(v.strictObject({ path: v.string(), digest: v.string() })),
  text: v.string(),
});

/** Unsaved work as it lies in the program's data folder. */
export type Draft = Omit<v.InferOutput<typeof schema>, 'draft'>;

export function draftBytes(draft: Draft): Uint8Array {
  return new TextEncoder().encode(JSON.stringify({ draft: 1, ...draft }));
}

/** Null for bytes that are no draft; they are never removed for that. */
export function draftOf(bytes: Uint8Array): Draft | null {
  try {
    const read = v.safeParse(schema, JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(bytes)));
    if (!read.success) return null;
    const { draft: _version, ...draft } = read.output;
    return draft;
  } catch {
    return null;
  }
}
