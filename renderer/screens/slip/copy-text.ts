/**
 * Puts text on the clipboard. Says whether it did: where the page is not allowed to use the clipboard by itself, the text is selected
 * and copied as by the person's own keys.
 */
export async function copyText(text: string): Promise<boolean> {
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    return copyBySelection(text);
  }
}

function copyBySelection(text: string): boolean {
  const before = document.activeElement;
  const area = document.createElement('textarea');
  area.value = text;
  area.className = 'spoken';
  document.body.append(area);
  area.select();
  // eslint-disable-next-line @typescript-eslint/no-deprecated -- the only way to copy that needs no permission, which the desktop grants to no page
  const isCopied = document.execCommand('copy');
  area.remove();
  if (before instanceof HTMLElement) before.focus();
  return isCopied;
}
