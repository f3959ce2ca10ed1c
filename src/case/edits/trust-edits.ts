import type { Actual } from '../actuals.ts';
import type { Case, PriceTerms } from '../case.ts';
import { type SameProduct, type SameProductAnswer, isAbout, sameProductQuestions } from '../same-product.ts';

/** A change of what makes an answer believable; none of these changes what the case comes to, save other terms of a price. */
export type TrustEdit =
  /** Answers one question about two routes, or takes the place of the answer before; null opens it again. */
  | {
      readonly kind: 'answer same product';
      readonly base: string;
      readonly with: string;
      readonly question: SameProductAnswer['question'];
      readonly answer: Omit<SameProductAnswer, 'question'> | null;
    }
  /** Puts a measured figure beside a result, or takes the place of the one before. */
  | { readonly kind: 'put actual'; readonly actual: Actual }
  | { readonly kind: 'remove actual'; readonly result: string }
  /** Says of which day a given figure is; null where that is not known. */
  | { readonly kind: 'date input'; readonly input: string; readonly date: string | null }
  /** What the price of a material is per, stands for and is in. The number stays; what it means changes. */
  | { readonly kind: 'set price terms'; readonly material: string; readonly terms: PriceTerms };

const kinds: Readonly<Record<TrustEdit['kind'], true>> = {
  'answer same product': true,
  'put actual': true,
  'remove actual': true,
  'date input': true,
  'set price terms': true,
};

export function isTrustEdit(edit: { readonly kind: string }): edit is TrustEdit {
  return Object.hasOwn(kinds, edit.kind);
}

/** Units in which a price is written, and the tonnage of its tiers. */
export interface PriceUnits {
  readonly price: string;
  readonly tonnage: string;
}

/** `unitsOf` says in what units a price of such terms is written. */
export function withTrust(content: Case, edit: TrustEdit, unitsOf: (terms: PriceTerms) => PriceUnits): Case {
  switch (edit.kind) {
    case 'answer same product':
      return withAnswer(content, edit);
    case 'put actual':
      return withActuals(content, [...otherActuals(content, edit.actual.result), edit.actual]);
    case 'remove actual':
      return withActuals(content, otherActuals(content, edit.result));
    case 'date input':
      return withDate(content, edit.input, edit.date);
    case 'set price terms':
      return withTerms(content, edit.material, edit.terms, unitsOf(edit.terms));
  }
}

function withAnswer(content: Case, edit: Extract<TrustEdit, { kind: 'answer same product' }>): Case {
  const { base, with: other, question, answer } = edit;
  const known = (content.sameProduct ?? []).find((pair) => isAbout(pair, base, other));
  const kept = (known?.answers ?? []).filter((each) => each.question !== question);
  const place = (each: SameProductAnswer): number => sameProductQuestions.indexOf(each.question);
  const answers = (answer === null ? kept : [...kept, { question, ...answer }]).toSorted((a, b) => place(a) - place(b));
  const pair: SameProduct = { base: known?.base ?? base, with: known?.with ?? other, answers };
  const pairs = (content.sameProduct ?? []).map((each) => (each === known ? pair : each));
  return withPairs(content, known === undefined ? [...pairs, pair] : pairs);
}

/** A pair without answers is left out, and the whole list where no pair has any. */
function withPairs(content: Case, pairs: readonly SameProduct[]): Case {
  const { sameProduct: _before, ...rest } = content;
  const answered = pairs.filter(({ answers }) => answers.length > 0);
  return answered.length === 0 ? rest : { ...rest, sameProduct: answered };
}

/** The case without answers about a route that is no more. */
export function withoutPairsOf(content: Case, routeId: string): Case {
  return withPairs(
    content,
    (content.sameProduct ?? []).filter((pair) => pair.base !== routeId && pair.with !== routeId),
  );
}

function otherActuals(content: Case, result: string): readonly Actual[] {
  return (content.actuals ?? []).filter((each) => each.result !== result);
}

/** A list that has become empty is left out, as in a case that never had one. */
export function withActuals(content: Case, actuals: readonly Actual[]): Case {
  const { actuals: _before, ...rest } = content;
  return actuals.length === 0 ? rest : { ...rest, actuals };
}

function withDate(content: Case, input: string, date: string | null): Case {
  const given = Object.hasOwn(content.inputs, input) ? content.inputs[input] : undefined;
  if (given === undefined) return content;
  const { date: _before, ...rest } = given;
  return { ...content, inputs: { ...content.inputs, [input]: date === null ? rest : { ...rest, date } } };
}

/** "600 a tonne" stays 600 when the tonne becomes another: only the person who read the price knows that it did. */
function withTerms(content: Case, material: string, terms: PriceTerms, units: PriceUnits): Case {
  const start = `material.${material}.`;
  const unitFor = (id: string): string | null => {
    if (!id.startsWith(start)) return null;
    const what = id.slice(start.length);
    if (/^(price|rebate|tier\.\d+\.price)$/u.test(what)) return units.price;
    return /^tier\.\d+\.tonnes$/u.test(what) ? units.tonnage : null;
  };
  const named = (inputs: Case['inputs']): Case['inputs'] =>
    Object.fromEntries(
      Object.entries(inputs).map(([id, given]) => [id, { ...given, unit: unitFor(id) ?? given.unit }]),
    );
  const { scenarios, ...rest } = content;
  return {
    ...rest,
    ...(scenarios === undefined
      ? {}
      : { scenarios: scenarios.map((each) => ({ ...each, inputs: named(each.inputs) })) }),
    materials: content.materials.map((each) => (each.id === material ? { ...each, price: terms } : each)),
    inputs: named(content.inputs),
  };
}
