/**
 * The region whose number format the terminal asks for, by the usual variables ("de_AT.UTF-8" is "de-AT"); English where none does.
 * A variable that is set to nothing counts as not set, and the first that is set decides, as POSIX has it (Base Definitions, 8.2).
 */
export function numberLocale(environment: Readonly<Record<string, string | undefined>>): string {
  const named = ['LC_ALL', 'LC_NUMERIC', 'LANG'].map((name) => environment[name]).find((value) => value) ?? '';
  const tag = named.split(/[.@]/u)[0]?.replace('_', '-') ?? '';
  try {
    return /^[a-z]{2,3}(-[A-Za-z0-9]+)*$/u.test(tag) ? (Intl.getCanonicalLocales(tag)[0] ?? 'en') : 'en';
  } catch {
    return 'en';
  }
}
