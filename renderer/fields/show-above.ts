/** A popover stands above everything, so that neither a scrolled ledger nor its total can cover it. */
export function showAbove(popover: HTMLElement): void {
  popover.showPopover();
}
