import type { Preferences } from '../../electron/preferences.ts';

/** The value of data-theme on the page; null leaves light or dark to the system. */
export function themeOnPage(theme: Preferences['theme'], systemWantsContrast: boolean): string | null {
  if (theme !== 'system') return theme;
  return systemWantsContrast ? 'contrast' : null;
}

/** Puts a theme on the page, and follows the system while the person leaves the choice to it. Returns what ends that. */
export function keepTheme(theme: Preferences['theme']): () => void {
  const contrast = matchMedia('(prefers-contrast: more)');
  const show = (): void => {
    const shown = themeOnPage(theme, contrast.matches);
    if (shown === null) delete document.documentElement.dataset['theme'];
    else document.documentElement.dataset['theme'] = shown;
  };
  show();
  contrast.addEventListener('change', show);
  return () => contrast.removeEventListener('change', show);
}
