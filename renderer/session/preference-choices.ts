import type { Preferences } from '../../electron/preferences.ts';

export const themeChoices: readonly { readonly value: Preferences['theme']; readonly label: string }[] = [
  { value: 'system', label: 'As the system' },
  { value: 'light', label: 'Light' },
  { value: 'dark', label: 'Dark' },
  { value: 'contrast', label: 'Strong contrast' },
];

export const currencyChoices: readonly { readonly value: Preferences['currencyText']; readonly label: string }[] = [
  { value: 'symbol', label: 'Sign (€)' },
  { value: 'code', label: 'Code (EUR)' },
];

// One region for each way of writing numbers that is in common use (Unicode CLDR, as Intl.NumberFormat carries it).
const regions = ['en-GB', 'de-DE', 'fr-FR', 'fi-FI', 'de-CH', 'en-IN', 'es-ES', 'pt-BR'];

function sample(locale: string): string {
  return new Intl.NumberFormat(locale, { minimumFractionDigits: 2 }).format(1234567.5);
}

/** The number formats to choose from, each by what it looks like; "" is the system's own. Formats that look alike stand once. */
export function localeChoices(
  systemLocale: string,
  chosen: string | null,
): readonly { readonly value: string; readonly label: string }[] {
  const names = new Intl.DisplayNames('en', { type: 'language' });
  const seen = new Set<string>();
  const offered = [...(chosen === null ? [] : [chosen]), ...regions].filter((locale) => {
    const look = sample(locale);
    return !seen.has(look) && seen.add(look);
  });
  return [
    { value: '', label: `As the system: ${sample(systemLocale)}` },
    ...offered.map((value) => ({ value, label: `${sample(value)} (${names.of(value) ?? value})` })),
  ];
}

const zooms = [50, 67, 75, 80, 90, 100, 110, 125, 150, 175, 200];

export function zoomChoices(now: number): readonly { readonly value: string; readonly label: string }[] {
  const all = [...new Set([...zooms, now])].sort((one, other) => one - other);
  return all.map((zoom) => ({ value: String(zoom), label: `${String(zoom)} %` }));
}
