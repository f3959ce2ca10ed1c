import type { MachineCaution } from '../study/machine-cautions.ts';
import { shortNumber } from './short-number.ts';

/** What to look at in what the furnish does to the machine, in one or two sentences. */
export function machineCautionSentence(caution: MachineCaution): string {
  switch (caution.kind) {
    case 'no machine effect': {
      const share = ({ route, share: percent }: typeof caution.base): string =>
        `${route} is ${shortNumber(String(percent), 3)} % recovered fibre`;
      return `Machine effect: none entered. ${share(caution.base)}, ${share(caution.with)}, and both are taken to run the machine alike; breaks, speed and second quality can decide more than electricity does.`;
    }
    case 'hours without a cost':
      return `${caution.route}: the orders take ${shortNumber(String(Math.abs(caution.hours)), 3)} hours a year ${caution.hours < 0 ? 'fewer' : 'more'}, and nothing says what an hour costs.`;
    case 'seconds without an allowance':
      return `${caution.route}: part of what it makes sells as second quality, and nothing says for how much less.`;
    case 'price and contribution':
      return 'A price of the product and a contribution of a tonne are both given. The price is used; the contribution does nothing.';
  }
}
