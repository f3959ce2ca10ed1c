import { createSubscriber } from 'svelte/reactivity';

/** The pages of the book, by the name in their address. */
export type Page = 'spread' | 'machine' | 'lines' | 'waste' | 'what-if' | 'outlay' | 'lots' | 'reconcile' | 'new-case';

const pages: readonly Page[] = [
  'spread',
  'machine',
  'lines',
  'waste',
  'what-if',
  'outlay',
  'lots',
  'reconcile',
  'new-case',
];

/** Which page is open. It stands in the address, so that the browser's own back and forward lead through the pages. */
export class Pages {
  readonly #subscribe = createSubscriber((update) => {
    addEventListener('hashchange', update);
    return () => removeEventListener('hashchange', update);
  });

  get current(): Page {
    this.#subscribe();
    const named = location.hash.slice(1);
    return pages.find((page) => page === named) ?? 'spread';
  }

  turnTo(page: Page): void {
    location.hash = page;
  }
}
