/**
 * Correct but unusual practice, written as a good shop would write it: nothing is found in any of these files. A rule
 * that reports something here nags at a bench hand who is right.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { checkFiles } from '../../language/db/workspace.ts';
import { fullMessage } from '../../language/model/diagnostic.ts';

const folder = fileURLToPath(new URL('.', import.meta.url));
const source = (name: string) => ({ uri: name, text: readFileSync(join(folder, name), 'utf8') });
const shop = source('shop.rebuild');
const names = readdirSync(folder)
  .filter((name) => name.endsWith('.rebuild') && name !== shop.uri)
  .sort();

describe('the corpus', () => {
  it('has forty-five practices or more, each with what is unusual at its head', () => {
    expect(names.length).toBeGreaterThanOrEqual(45);
    for (const name of names) expect(source(name).text, name).toMatch(/^\/\/ Unusual: [\s\S]*?\bRight\b/u);
  });

  it.each(names)('%s', (name) => {
    const { diagnostics, procedures } = checkFiles([shop, source(name)]);
    expect(procedures.length).toBeGreaterThan(0);
    expect(
      diagnostics.map(
        (diagnostic) =>
          `${diagnostic.source.file}:${diagnostic.source.range.start.line + 1} ${diagnostic.rule}: ${fullMessage(diagnostic)}`,
      ),
    ).toEqual([]);
  });
});
