/** Bytes of a file on the disk to text, or the reason why they are none. */
import { readFile, stat } from 'node:fs/promises';

/** A file's text, or what to tell about it. `gone`: it is no longer there. */
export type ReadText =
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'unreadable'; readonly message: string }
  | { readonly kind: 'gone' };

/** Longest file that is read, in bytes; the parser has a lower limit of its own, in characters. */
const longestFile = 64 * 1024 * 1024;

/** Reads a file as UTF-8. Never throws. */
export async function readText(path: string): Promise<ReadText> {
  try {
    const { size } = await stat(path);
    if (size > longestFile) {
      return { kind: 'unreadable', message: `This file has ${Math.round(size / 1024 / 1024)} MB and was not read. Put its declarations into several files.` };
    }
    return decodeText(await readFile(path));
  } catch (error) {
    if (error instanceof Error && 'code' in error && (error.code === 'ENOENT' || error.code === 'ENOTDIR')) return { kind: 'gone' };
    return { kind: 'unreadable', message: `This file could not be read: ${error instanceof Error ? error.message : String(error)}` };
  }
}

/** UTF-8 only: any other spelling would put other words on the sheet than the author wrote. */
export function decodeText(bytes: Uint8Array): ReadText {
  const [first, second] = bytes;
  if ((first === 0xff && second === 0xfe) || (first === 0xfe && second === 0xff)) {
    return { kind: 'unreadable', message: 'This file is saved as UTF-16 and was not read. Save it as UTF-8.' };
  }
  if (bytes.includes(0)) {
    return { kind: 'unreadable', message: 'This file holds bytes that are no text (or UTF-16 without a mark) and was not read. Save it as UTF-8.' };
  }
  try {
    return { kind: 'text', text: new TextDecoder('utf-8', { fatal: true }).decode(bytes) };
  } catch {
    return { kind: 'unreadable', message: 'This file is not saved as UTF-8 and was not read: its accents and degree signs would come out wrong. Save it as UTF-8.' };
  }
}
