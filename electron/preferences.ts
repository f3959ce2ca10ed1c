/** How a person likes the program to look; kept with the program, not with a case. */
export interface Preferences {
  /** A BCP 47 tag whose number format is used; null for what the system says. */
  readonly numberLocale: string | null;
  readonly theme: 'system' | 'light' | 'dark' | 'contrast';
  /** Money as "€" or as "EUR": symbols are shared ("$", "kr"), codes are not. */
  readonly currencyText: 'symbol' | 'code';
  /** Of the window, in percent. */
  readonly zoom: number;
}

export const usualPreferences: Preferences = {
  numberLocale: null,
  theme: 'system',
  currencyText: 'symbol',
  zoom: 100,
};
