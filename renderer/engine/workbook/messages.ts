/** What comes back for the plan of a workbook: its bytes, or what the program did wrong. */
export type BookWritten = { readonly bytes: Uint8Array } | { readonly fault: string };
