import type { Graph } from '../../kernel/graph/graph.ts';

/**
 * For each node the named quantity that it is first a part of; itself, where it has a name. Parts stand before what is made of them, so
 * that one pass from the end settles all of them.
 */
export function ownersOf({ nodes }: Graph): readonly number[] {
  const owners = new Array<number>(nodes.length).fill(Infinity);
  for (const { index, args, declaration } of [...nodes].reverse()) {
    if (declaration !== null) owners[index] = index;
    for (const arg of args) owners[arg] = Math.min(owners[arg] ?? Infinity, owners[index] ?? Infinity);
  }
  return owners;
}
