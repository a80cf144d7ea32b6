import { readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';

export const root = fileURLToPath(new URL('..', import.meta.url));

/** The files of the library, by path from the root; without the flawed one unless it is requested. */
export function libraryFiles(flawed = false): { readonly uri: string; readonly text: string }[] {
  const folder = join(root, 'procedures');
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && entry.name.endsWith('.rebuild'))
    .map((entry) => join(entry.parentPath, entry.name))
    .filter((path) => flawed || !path.includes('flawed'))
    .sort()
    .map((path) => ({ uri: relative(root, path).replaceAll('\\', '/'), text: readFileSync(path, 'utf8') }));
}
