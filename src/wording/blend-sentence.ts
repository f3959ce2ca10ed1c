import type { BlendLimitName } from '../study/lots/blend/blend-limit.ts';
import type { BlendReason } from '../study/lots/blend/least-cost-blend.ts';
import type { GivenBlend } from '../study/lots/blend/given-blend.ts';
import { paperGrades } from '../paper/materials/en-643.ts';
import { formatNumber } from './number-format.ts';

/** A limit of a blend by its name and unit: "Ash of the product, %". */
export function blendLimitPhrase(name: BlendLimitName, labels: ReadonlyMap<string, string>): string {
  switch (name.kind) {
    case 'ash':
      return 'Ash of the product, %';
    case 'macro-stickies':
      return 'Macro-stickies in the product, kg/t';
    case 'moisture':
      return 'Moisture of what is bought, %';
    case 'grade':
      return `Share of ${name.code} ${paperGrades.get(name.code)?.name ?? ''}, ${name.end === 'most' ? 'at most' : 'at least'}, %`;
    case 'available':
      return `Available from ${labels.get(name.lot) ?? name.lot}, t`;
  }
}

/** Why no blend keeps all limits: what must give, and how near one comes. */
export function blendReasonSentence(
  reasons: readonly BlendReason[],
  labels: ReadonlyMap<string, string>,
  locale: string,
): string {
  const short = (value: number): string => formatNumber(value, { locale, significant: 4 });
  const told = reasons.map(
    ({ name, wanted, reached }) =>
      `${blendLimitPhrase(name, labels)}: ${short(wanted)} is set, the nearest blend comes to ${short(reached)}`,
  );
  return `No blend meets the limits: ${reasons.length === 1 ? 'this one is the reason' : 'these are the reason'}. ${told.join('; ')}.`;
}

/** Why a blend by given shares cannot be worked out; "" where it can. */
export function givenBlendSentence(given: GivenBlend, labels: ReadonlyMap<string, string>, locale: string): string {
  switch (given.kind) {
    case 'blended':
      return '';
    case 'not whole':
      return `The shares of the blend add up to ${formatNumber(given.sum, { locale, significant: 6 })} %; they must make 100 %.`;
    case 'not to be had':
      return `Not to be had today: ${given.lots.map((id) => labels.get(id) ?? id).join(', ')}. Give their share to other lots.`;
  }
}
