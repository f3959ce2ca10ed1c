/** What is looked at on the page of lots. It is kept while other pages are read. */
export class LotsPlace {
  /** The lot on the table; "" for the first. */
  lot = $state.raw('');
  /** Whether the buyer's own limits, and what others offer, are off the screen. */
  isHidden = $state.raw(false);
}
