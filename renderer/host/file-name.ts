/** The suggestion with the extension that belongs to it ("tonne", "xlsx"), so that the file opens with a double click later. */
export function fileName(suggestedName: string, extension: string): string {
  return suggestedName.toLowerCase().endsWith(`.${extension}`) ? suggestedName : `${suggestedName}.${extension}`;
}
