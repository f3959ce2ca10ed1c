/** The region whose number format the terminal asks for, by the usual variables ("de_AT.UTF-8" is "de-AT"); English where none does. */
export function numberLocale(environment: Readonly<Record<string, string | undefined>>): string {
  const named = environment['LC_ALL'] ?? environment['LC_NUMERIC'] ?? environment['LANG'] ?? '';
  const tag = named.split('.')[0]?.replace('_', '-') ?? '';
  try {
    return /^[a-z]{2,3}(-[A-Za-z0-9]+)*$/u.test(tag) ? (Intl.getCanonicalLocales(tag)[0] ?? 'en') : 'en';
  } catch {
    return 'en';
  }
}
