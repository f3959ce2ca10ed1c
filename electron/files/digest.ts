import { createHash } from 'node:crypto';

/** By which a text is recognised again: SHA-256 in hexadecimal. */
export function digestOf(bytes: Uint8Array): string {
  return createHash('sha256').update(bytes).digest('hex');
}
