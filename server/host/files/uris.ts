/** One spelling for each file: editors write the same file's URI in several ways (`%3A` for `:`, a drive in capitals). */
import { fileURLToPath, pathToFileURL } from 'node:url';

/** The spelling that the index uses. What is no file URI is kept as it is. */
export function canonicalUri(uri: string): string {
  const path = pathOfUri(uri);
  return path === null ? uri : uriOfPath(path);
}

/** Path of a file URI; null for others, and for a host's share where there is none. */
export function pathOfUri(uri: string): string | null {
  if (!uri.startsWith('file:')) return null;
  try {
    return fileURLToPath(uri);
  } catch {
    return null;
  }
}

/** File URI of a path, as the index spells it. */
export function uriOfPath(path: string): string {
  return pathToFileURL(path).href.replace(
    /^file:\/\/\/([A-Z]):/,
    (_, drive: string) => `file:///${drive.toLowerCase()}:`,
  );
}
