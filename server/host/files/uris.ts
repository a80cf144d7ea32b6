/**
 * One spelling for each file, which is VS Code's own: editors write the same file's URI in several ways (`:` for `%3A`, a drive
 * in capitals).
 */
import { URI } from 'vscode-uri';

/** The spelling that the index uses. What is no file URI is kept as it is. */
export function canonicalUri(uri: string): string {
  const path = pathOfUri(uri);
  return path === null ? uri : uriOfPath(path);
}

/** Path of a file URI; null for others, and for a host's share where there is none. */
export function pathOfUri(uri: string): string | null {
  if (!uri.startsWith('file:')) return null;
  try {
    const { authority, fsPath } = URI.parse(uri);
    return authority !== '' && process.platform !== 'win32' ? null : fsPath;
  } catch {
    return null;
  }
}

/** File URI of a path, as the index spells it. Half a character, which no URI can carry, becomes U+FFFD. */
export function uriOfPath(path: string): string {
  return URI.file(path.replace(/\p{Surrogate}/gu, '\ufffd')).toString();
}
