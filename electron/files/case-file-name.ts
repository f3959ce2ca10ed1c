// Characters that a file name may not hold on Windows, which also cover the separators of the others, and control characters.
const forbidden = /[<>:"/\\|?*\p{Cc}]/gu;

/** A suggestion made fit for a file name, with the extension of a case. */
export function caseFileName(suggestedName: string): string {
  const plain = suggestedName
    .replace(forbidden, ' ')
    .replace(/\s+/g, ' ')
    .replace(/^[. ]+|[. ]+$/g, '')
    .slice(0, 100);
  if (plain === '') return 'case.tonne';
  return plain.toLowerCase().endsWith('.tonne') ? plain : `${plain}.tonne`;
}
