import { readMonths, type PriceMonths } from '../../../../../src/index.ts';
import { badRowSentence } from '../../../../../src/wording/month-sentences.ts';
import { readNumber } from '../../../../fields/read-number.ts';

/** Months as they stand in the box: a row each, cells parted by tabs, with the person's decimal mark. */
export function monthsText(points: PriceMonths['points'], decimalMark: string): string {
  const figure = (digits: string): string => digits.replace('.', decimalMark);
  return points.map(({ month, pulp, recovered }) => [month, figure(pulp), figure(recovered)].join('\t')).join('\n');
}

export interface PastedMonths {
  readonly points: PriceMonths['points'];
  /** Why rows are none, each in a sentence. */
  readonly refused: readonly string[];
}

export function pastedMonths(text: string, decimalMark: string): PastedMonths {
  const { points, bad } = readMonths(text, decimalMark, (cell) => readNumber(cell, decimalMark));
  const refused = bad.map(badRowSentence);
  return { points, refused: points.length + refused.length === 0 ? ['There is no month here.'] : refused };
}
