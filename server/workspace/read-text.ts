/** Reads a file of the disk. What is no text is told by the check, as it is on the command line. */
import { readFile, stat } from 'node:fs/promises';

/** A file's text, or what to tell about it. `gone`: it is no longer there. */
export type ReadText =
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'unreadable'; readonly message: string }
  | { readonly kind: 'gone' };

/** Longest file that is read into memory, in bytes; the parser has a lower limit of its own, in characters. */
const longestFile = 64 * 1024 * 1024;

/** Reads a file as UTF-8. Never throws. */
export async function readText(path: string): Promise<ReadText> {
  try {
    const { size } = await stat(path);
    if (size > longestFile) {
      return {
        kind: 'unreadable',
        message: `This file has ${Math.round(size / 1024 / 1024)} MB and was not read. Put its declarations into several files.`,
      };
    }
    return { kind: 'text', text: await readFile(path, 'utf8') };
  } catch (error) {
    if (error instanceof Error && 'code' in error && (error.code === 'ENOENT' || error.code === 'ENOTDIR'))
      return { kind: 'gone' };
    return {
      kind: 'unreadable',
      message: `This file could not be read: ${error instanceof Error ? error.message : String(error)}`,
    };
  }
}
