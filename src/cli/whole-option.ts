import { WrongUse } from './console.ts';

/** An option that takes a whole number; nothing where it was not given. */
export function wholeOption<Name extends string>(
  name: Name,
  given: string | undefined,
  least: number,
  most: number,
): { readonly [Key in Name]?: number } {
  if (given === undefined) return {};
  const value = Number(given);
  if (!/^\d+$/u.test(given) || value < least || value > most)
    throw new WrongUse(
      `--${name} takes a whole number from ${String(least)} to ${String(most)}; "${given}" was given.`,
    );
  return { [name]: value } as { readonly [Key in Name]?: number };
}
