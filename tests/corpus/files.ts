import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const folder = fileURLToPath(new URL('.', import.meta.url));

/** The files of the corpus, by their names; `shop.rebuild` is what all others are written at. */
export function corpusFiles(): { readonly uri: string; readonly text: string }[] {
  return readdirSync(folder)
    .filter((name) => name.endsWith('.rebuild'))
    .sort()
    .map((name) => ({ uri: name, text: readFileSync(join(folder, name), 'utf8') }));
}
