/** The place of the rule pages: in folders by area, beside the built server or where the client says. */
import { readdirSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { pathOfUri, uriOfPath } from './uris.ts';

/**
 * URI of each rule's page.
 * @param folder URI of the folder of areas; null: the one that is shipped beside the server
 */
export function rulePages(folder: string | null): ReadonlyMap<string, string> {
  const path =
    folder === null ? join(dirname(process.argv[1] ?? '.'), '../language/diagnostics/areas') : pathOfUri(folder);
  const pages = new Map<string, string>();
  if (path === null) return pages;
  for (const area of list(path)) {
    if (!area.isDirectory()) continue;
    for (const page of list(join(path, area.name))) {
      if (page.name.endsWith('.md'))
        pages.set(page.name.slice(0, -'.md'.length), uriOfPath(join(path, area.name, page.name)));
    }
  }
  return pages;
}

function list(path: string) {
  try {
    return readdirSync(path, { withFileTypes: true });
  } catch {
    // Without pages a code is a name without a link.
    return [];
  }
}
