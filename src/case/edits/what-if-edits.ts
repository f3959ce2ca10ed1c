import type { Case } from '../case.ts';
import type { PriceMonths } from '../price-months.ts';
import type { GivenRange, Limit, Scenario, Uncertainty } from '../what-if.ts';

/** A change of what is asked of a case: none of these changes what it comes to, save putting a scenario in force. */
export type WhatIfEdit =
  | { readonly kind: 'set range'; readonly input: string; readonly range: GivenRange | null }
  /** Adds a limit, or takes the place of the one with its id. */
  | { readonly kind: 'put limit'; readonly limit: Limit }
  | { readonly kind: 'remove limit'; readonly limit: string }
  /** Adds a scenario, or takes the place of the one with its id. */
  | { readonly kind: 'put scenario'; readonly scenario: Scenario }
  | { readonly kind: 'remove scenario'; readonly scenario: string }
  /** Gives the case the figures of a scenario. */
  | { readonly kind: 'put in force'; readonly scenario: string }
  | { readonly kind: 'set uncertainty'; readonly uncertainty: Uncertainty | null }
  /** The mill's own months, all of them at once; null takes them away. */
  | { readonly kind: 'set months'; readonly months: PriceMonths | null };

const kinds: Readonly<Record<WhatIfEdit['kind'], true>> = {
  'set range': true,
  'put limit': true,
  'remove limit': true,
  'put scenario': true,
  'remove scenario': true,
  'put in force': true,
  'set uncertainty': true,
  'set months': true,
};

export function isWhatIfEdit(edit: { readonly kind: string }): edit is WhatIfEdit {
  return Object.hasOwn(kinds, edit.kind);
}

export function withWhatIf(content: Case, edit: WhatIfEdit): Case {
  switch (edit.kind) {
    case 'set range':
      return withRange(content, edit.input, edit.range);
    case 'put limit':
      return withList(content, 'limits', put(content.limits, edit.limit));
    case 'remove limit':
      return withList(content, 'limits', without(content.limits, edit.limit));
    case 'put scenario':
      return withList(content, 'scenarios', put(content.scenarios, edit.scenario));
    case 'remove scenario':
      return withList(content, 'scenarios', without(content.scenarios, edit.scenario));
    case 'put in force': {
      const scenario = content.scenarios?.find(({ id }) => id === edit.scenario);
      return { ...content, inputs: { ...content.inputs, ...scenario?.inputs } };
    }
    case 'set uncertainty': {
      const { uncertainty: _before, ...rest } = content;
      return edit.uncertainty === null ? rest : { ...rest, uncertainty: edit.uncertainty };
    }
    case 'set months': {
      const { months: _before, ...rest } = content;
      return edit.months === null ? rest : { ...rest, months: edit.months };
    }
  }
}

function withRange(content: Case, input: string, range: GivenRange | null): Case {
  const { ranges: before = {}, ...rest } = content;
  const others = Object.entries(before).filter(([id]) => id !== input);
  const kept = range === null ? others : [...others, [input, range] as const];
  return kept.length === 0 ? rest : { ...rest, ranges: Object.fromEntries(kept) };
}

interface Named {
  readonly id: string;
}

function put<Item extends Named>(list: readonly Item[] = [], item: Item): readonly Item[] {
  return list.some(({ id }) => id === item.id)
    ? list.map((each) => (each.id === item.id ? item : each))
    : [...list, item];
}

function without<Item extends Named>(list: readonly Item[] = [], id: string): readonly Item[] {
  return list.filter((each) => each.id !== id);
}

/** A list that has become empty is left out, as in a case that never had one. */
function withList<Key extends 'limits' | 'scenarios'>(content: Case, key: Key, list: NonNullable<Case[Key]>): Case {
  if (list.length > 0) return { ...content, [key]: list };
  const { [key]: _empty, ...rest } = content;
  return rest as Case;
}
