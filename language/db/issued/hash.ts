import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';

/** SHA-256 of a text in UTF-8, hex. It is the same in the command, the editor and a browser. */
export function hashOf(text: string): string {
  return bytesToHex(sha256(utf8ToBytes(text)));
}
