import type { FileOutcome } from '../../electron/host.ts';

// The desktop program refuses the same size; a case of thousands of lines is below 1 MB.
const largestBytes = 20 * 1024 * 1024;

function refuse(file: File, because: string, next: string): FileOutcome {
  const sentence = `“${file.name}” was not opened: ${because}. The case on the screen is unchanged. ${next}.`;
  return { kind: 'failed', sentence };
}

export async function readBrowserFile(file: File): Promise<FileOutcome> {
  if (file.size > largestBytes) return refuse(file, 'it is larger than 20 MB, which no case is', 'Choose another file');
  let bytes: ArrayBuffer;
  try {
    bytes = await file.arrayBuffer();
  } catch {
    return refuse(file, 'it could not be read', 'Check that its drive is connected and open it again');
  }
  try {
    const text = new TextDecoder('utf-8', { fatal: true }).decode(bytes);
    // Text in two-byte encodings can pass as UTF-8 full of NUL characters.
    if (!text.includes('\u0000')) return { kind: 'read', name: file.name, text };
  } catch {
    // Not UTF-8: told below.
  }
  return refuse(file, 'it is not a text file in the UTF-8 encoding', 'Choose a file that this program saved');
}
