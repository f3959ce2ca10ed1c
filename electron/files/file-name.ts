// Characters that a file name may not hold on Windows, which also cover the separators of the others, and control characters.
const forbidden = /[<>:"/\\|?*\p{Cc}]/gu;

/** A suggestion made fit for a file name, with the extension that belongs to it ("tonne", "xlsx"). */
export function fileName(suggestion: string, extension: string): string {
  const plain = suggestion
    .replace(forbidden, ' ')
    .replace(/\s+/g, ' ')
    .replace(/^[. ]+|[. ]+$/g, '')
    .slice(0, 100);
  const name = plain === '' ? 'case' : plain;
  return name.toLowerCase().endsWith(`.${extension}`) ? name : `${name}.${extension}`;
}
