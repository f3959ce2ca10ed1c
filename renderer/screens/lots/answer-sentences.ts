import type { LotsView, PricedLot } from '../../../src/index.ts';
import type { NumberStyle } from '../../numbers/number-style.ts';
import { priceText } from './lot-texts.ts';

/** What the price to walk away at means beside the price asked, in a few short sentences. */
export function answerSentences(lot: PricedLot, view: LotsView, numbers: NumberStyle): readonly string[] {
  const { walkAway, asked } = lot;
  const text = (value: number): string => priceText(value, numbers);
  const gap = walkAway.price - asked;
  const best = view.lots.find((each) => each.lot.id === walkAway.otherLot)?.lot.label;
  const rivals = {
    'virgin line': view.virgin?.label ?? 'virgin pulp',
    'best other lot': best ?? 'another lot',
    'target cost': 'the target cost',
  };
  const others = [
    walkAway.against !== 'virgin line' && Number.isFinite(walkAway.virgin)
      ? `Against ${view.virgin?.label ?? 'virgin pulp'} alone: up to ${text(walkAway.virgin)}.`
      : '',
    walkAway.against !== 'best other lot' && Number.isFinite(walkAway.other)
      ? `Against ${best ?? 'the best other lot'}: up to ${text(walkAway.other)}.`
      : '',
    walkAway.against !== 'target cost' && Number.isFinite(walkAway.target)
      ? `Against the target cost: up to ${text(walkAway.target)}.`
      : '',
  ];
  return [
    ...(Number.isFinite(gap) ? [gapSentence(gap, asked, text)] : []),
    ...(walkAway.against === null ? ['There is nothing yet to hold it against.'] : []),
    ...(walkAway.low === null || walkAway.high === null
      ? []
      : [`Over the readings: ${text(walkAway.low)} to ${text(walkAway.high)}.`]),
    ...(walkAway.against === null || !Number.isFinite(walkAway.price)
      ? []
      : [
          walkAway.against === 'target cost'
            ? `Above that, a tonne costs more than ${rivals['target cost']}.`
            : `Above that, ${rivals[walkAway.against]} is cheaper.`,
        ]),
    ...others.filter((sentence) => sentence !== ''),
  ];
}

function gapSentence(gap: number, asked: number, text: (value: number) => string): string {
  const begun = asked < 0 ? `They pay ${text(-asked)}` : `They ask ${text(asked)}`;
  if (text(gap) === text(0) || text(gap) === text(-0)) return `${begun}: just what it is worth.`;
  return gap > 0 ? `${begun}: ${text(gap)} below that.` : `${begun}: ${text(-gap)} too much.`;
}
