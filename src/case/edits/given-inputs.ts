import type { Case, GivenInput } from '../case.ts';

type Inputs = Case['inputs'];

/** Figures of everything below an id: "recovered.mixed.fine" holds "recovered.mixed.fine.rejectRate". */
function isUnder(id: string, prefix: string): boolean {
  return id === prefix || id.startsWith(`${prefix}.`);
}

export function withoutInputsOf(inputs: Inputs, prefix: string): Inputs {
  return Object.fromEntries(Object.entries(inputs).filter(([id]) => !isUnder(id, prefix)));
}

/** Gives a copy of something the figures of its original. */
export function withInputsCopied(inputs: Inputs, from: string, to: string): Inputs {
  const copies = Object.entries(inputs).flatMap(([id, given]): [string, GivenInput][] =>
    isUnder(id, from) ? [[`${to}${id.slice(from.length)}`, given]] : [],
  );
  return { ...inputs, ...Object.fromEntries(copies) };
}
