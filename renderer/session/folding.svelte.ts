import type { GroupId, SpreadGroup } from '../../src/index.ts';

/**
 * Which groups of the ledger are open. While there is height for every line all are; else the groups that differ little are folded.
 * What a person folds or unfolds stays so. The order is taken when a case is opened or the window changes its height, not at every
 * edit: a group must not close under the hand that types in it.
 */
export class Folding {
  #automatic = $state.raw<readonly GroupId[]>([]);
  #chosen = $state.raw<Partial<Record<GroupId, boolean>>>({});

  isOpen(id: GroupId): boolean {
    return this.#chosen[id] ?? this.#automatic.includes(id);
  }

  toggle(id: GroupId): void {
    this.#chosen = { ...this.#chosen, [id]: !this.isOpen(id) };
  }

  openAll(groups: readonly SpreadGroup[]): void {
    this.#automatic = groups.map(({ id }) => id);
  }

  /**
   * Opens the group of greatest difference that `rows` rows hold beside the heads of all, and others after it as long as they hold what is
   * open. Where they hold none the first is open all the same.
   */
  arrange(groups: readonly SpreadGroup[], rows: number): void {
    let free = rows - groups.length;
    const open: GroupId[] = [];
    const byDifference = [...groups].sort((left, right) => weight(right) - weight(left));
    for (const group of byDifference) {
      if (group.rows.length > free) continue;
      free -= group.rows.length;
      open.push(group.id);
    }
    const [first] = byDifference;
    this.#automatic = open.length === 0 && first !== undefined ? [first.id] : open;
  }

  forgetChoices(): void {
    this.#chosen = {};
  }
}

/** A group that cannot be worked out comes first: that is where something is missing. */
function weight(group: SpreadGroup): number {
  const { perTonne } = group.difference;
  return Number.isNaN(perTonne) ? Number.POSITIVE_INFINITY : Math.abs(perTonne);
}
