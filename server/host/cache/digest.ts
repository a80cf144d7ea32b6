import { createHash } from 'node:crypto';

/** Names a text: SHA-1 is short and fast, and nobody gains from two texts of one name but who could write the cache itself. */
export function digest(text: string | Uint8Array): string {
  return createHash('sha1').update(text).digest('base64');
}
