import type { Case } from '../case.ts';

/** Gives a stream another waste code than usual; null goes back to the usual one. */
export function setWasteCode(content: Case, stream: string, code: string | null): Case {
  const { wasteCodes: before = [], ...rest } = content;
  const others = before.filter((each) => each.stream !== stream);
  const kept = code === null ? others : [...others, { stream, code }];
  return kept.length === 0 ? rest : { ...rest, wasteCodes: kept };
}
