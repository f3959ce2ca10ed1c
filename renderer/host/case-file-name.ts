/** The suggestion with the extension of a case, so that the file opens with a double click later. */
export function caseFileName(suggestedName: string): string {
  return suggestedName.toLowerCase().endsWith('.tonne') ? suggestedName : `${suggestedName}.tonne`;
}
