import { createHash } from 'node:crypto';

/** So long may a name be, in characters, and in bytes of UTF-8: the file systems in use take 255 bytes with the ending. */
const longest = { characters: 120, bytes: 200 };

/**
 * A name that every file system takes. Characters that one may refuse become `-`; a name that is cut has digits behind that
 * tell it from others that begin alike.
 */
export function fileName(name: string): string {
  const plain = name.replace(/[^\p{L}\p{N}._ -]+/gu, '-').replace(/^[. ]+|[. ]+$/gu, '');
  if (plain === '') return 'sheet';
  // Windows gives these to devices, whatever the ending.
  if (/^(con|prn|aux|nul|(com|lpt)[\d¹²³])(\.|$)/iu.test(plain)) return `${plain}-sheet`;
  if (fits(plain)) return plain;
  const digits = nameDigits(name);
  const characters = [...plain];
  while (!fits(`${characters.join('')}-${digits}`)) characters.pop();
  return `${characters.join('')}-${digits}`;
}

/** Digits that tell a name from others, the same each time. */
export function nameDigits(name: string): string {
  return createHash('sha256').update(name).digest('hex').slice(0, 8);
}

/** Equal for names that would be one file on systems that do not distinguish case, or encodings of an accent. */
export function fileKey(name: string): string {
  return fileName(name).normalize('NFC').toLowerCase();
}

function fits(name: string): boolean {
  return name.length <= longest.characters && Buffer.byteLength(name) <= longest.bytes;
}
