import type { LotNote } from '../study/lots/lot-note.ts';
import { formatNumber } from './number-format.ts';

const lacking = {
  price: 'No price is given: there is no cost and no rank, but what may be paid at most is known.',
  distance: 'The distance is missing, so that the freight is not known.',
  freightRate: 'What a tonne costs to carry a kilometre is missing, so that the freight is not known.',
  loadMoney: 'What a load costs is missing, so that the freight is not known.',
  payload: 'The payload of a load is missing, so that the freight is not known.',
  baleDensity: 'The density of the bales is missing, so that what a load holds is not known.',
  downgradePrice: 'The price of the lower grade is missing, so that the downgraded lot has no cost.',
} as const;

/** What is to be said of a lot beside its figures. */
export function lotSentence(note: LotNote, locale: string): string {
  const short = (value: number): string => formatNumber(value, { locale, significant: 4 });
  const points = (value: number): string => formatNumber(value, { locale, decimals: 1 });
  switch (note.kind) {
    case 'lacks':
      return note.figure in lacking
        ? lacking[note.figure as keyof typeof lacking]
        : 'A figure is missing without which the lot has no cost.';
    case 'usual moisture':
      return `Nobody read the moisture: ${short(note.moisture)} %, as the line’s own paper has it, is used.`;
    case 'usual contents':
      return 'Nobody looked for unusable material: what the grade usually holds is used.';
    case 'usual freight':
      return `No freight is given: ${short(note.freight)}, as the line’s own paper pays it, is used.`;
    case 'single reading':
      return 'One reading of the moisture has no interval: a second would show how far it may be off.';
    case 'no dry matter':
      return 'At 100 % moisture there is no dry matter to pay for or to make stock of.';
    case 'nothing usable':
      return 'All of it is unusable: no stock can be made of it, at any price.';
    case 'more than the whole':
      return 'Unusable material and ash add up to more than the whole; one of them must be less.';
    case 'fee received':
      return 'A fee is received for taking this lot; it is settled as weighed, whatever the moisture.';
    case 'expired':
      return `This offer held until ${note.day}; it is left out of what others are held against.`;
    case 'over tolerance':
      return note.what === 'non-paper'
        ? `Non-paper is ${points(note.over)} points above what the grade tolerates.`
        : `Unwanted material in all is ${points(note.over)} points above what the grade tolerates.`;
    case 'refused':
      return 'Refused for what is above the tolerance: it has no rank.';
    case 'not settled on this basis':
      return 'A claim for unusable material is only settled where the price is per tonne as received.';
    case 'unknown grade':
      return `The program’s list has no grade ${note.code}; the paper of the line is used.`;
    case 'cannot be worked out':
      return 'With these figures the line cannot be worked out; see what the case says of it.';
  }
}
