import { tableHtml, tabText, type Cells } from './cells.ts';

/** Puts a table on the clipboard, as text and as a table in one write. Says whether it did. */
export async function copyCells(cells: Cells, decimalMark: string): Promise<boolean> {
  const [text, html] = [tabText(cells, decimalMark), tableHtml(cells, decimalMark)];
  try {
    const as = (type: string, content: string): Blob => new Blob([content], { type });
    const item = new ClipboardItem({ 'text/plain': as('text/plain', text), 'text/html': as('text/html', html) });
    await navigator.clipboard.write([item]);
    return true;
  } catch {
    return copyByKeys(text, html);
  }
}

/** Where the page may not use the clipboard by itself: as by the person's own keys, which asks for no permission. */
function copyByKeys(text: string, html: string): boolean {
  let isTaken = false;
  const put = (event: ClipboardEvent): void => {
    event.preventDefault();
    event.clipboardData?.setData('text/plain', text);
    event.clipboardData?.setData('text/html', html);
    isTaken = event.clipboardData !== null;
  };
  document.addEventListener('copy', put, { once: true });
  // eslint-disable-next-line @typescript-eslint/no-deprecated -- the only way to copy that needs no permission, which the desktop grants to no page
  const isCopied = document.execCommand('copy');
  document.removeEventListener('copy', put);
  return isCopied && isTaken;
}
