/**
 * The region's number format as the system reports it. A system without a region (a bare server says "C") gets British English,
 * the language of the screens.
 */
export function usableLocale(systemLocale: string): string {
  try {
    return Intl.NumberFormat.supportedLocalesOf(systemLocale)[0] ?? 'en-GB';
  } catch {
    // Not a language tag at all.
    return 'en-GB';
  }
}
