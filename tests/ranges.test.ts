/** Every place that is sent to an editor lies inside the text that it is of, whole, broken off or spoilt. */
import { expect, test } from 'vitest';
import { Workspace } from '../language/db/workspace.ts';
import { comparePositions } from '../language/model/ranges.ts';
import type { Range } from '../language/model/source.ts';
import type { DeclaredSymbol } from '../language/semantics/symbols.ts';
import { linesOf } from '../language/syntax/inside.ts';
import { libraryFiles } from './library.ts';

const library = libraryFiles(true);
const checker = new Workspace();

/** Places outside of the texts, as words; how many were looked at. */
function outside(files: typeof library): { count: number; found: string[] } {
  const { diagnostics, references: links, symbols } = checker.check(files);
  const lines = new Map(files.map(({ uri, text }) => [uri, linesOf(text)]));
  const found: string[] = [];
  let count = 0;
  const look = (file: string, { start, end }: Range, what: string) => {
    count++;
    const of = lines.get(file);
    const isInside = [start, end].every(
      ({ line, character }) => character >= 0 && character <= (of?.[line]?.length ?? -1),
    );
    if (!isInside || comparePositions(start, end) > 0)
      found.push(`${what} ${file}:${start.line}:${start.character}-${end.line}:${end.character}`);
  };
  for (const { rule, source, related, fix } of diagnostics) {
    look(source.file, source.range, rule);
    for (const one of related ?? []) look(one.source.file, one.source.range, `${rule}, related`);
    for (const one of fix?.edits ?? []) look(one.source.file, one.source.range, `${rule}, fix`);
  }
  for (const { use, target, what } of links) {
    look(use.file, use.range, `use of ${what}`);
    look(target.file, target.range, `declaration of ${what}`);
  }
  const symbol = (file: string, { kind, range, nameRange, children }: DeclaredSymbol) => {
    look(file, range, kind);
    look(file, nameRange, `name of ${kind}`);
    for (const child of children) symbol(file, child);
  };
  for (const [file, of] of symbols) for (const one of of) symbol(file, one);
  return { count, found };
}

test('of the library', () => {
  const { count, found } = outside(library);
  expect(found).toEqual([]);
  expect(count).toBeGreaterThan(4_000);
});

/** Ways in which a text is not as it should be. */
const spoilt: readonly [string, (text: string) => string][] = [
  ['with carriage returns', (text) => text.replaceAll('\n', '\r\n')],
  ['without a last line end', (text) => text.trimEnd()],
  ['with each opening brace lost', (text) => text.replaceAll('{', '')],
  ['with each closing quote lost', (text) => text.replace(/"([^"\n]*)"/gu, '"$1')],
  ['with each name of two letters or more cut', (text) => text.replace(/\b([a-z])[a-z-]+$/gmu, '$1')],
  ['with words of another script', (text) => text.replaceAll('body', 'тело\u{1F527}')],
];

test.each(spoilt)('of a file %s', (_, spoil) => {
  const found = library.flatMap(({ uri, text }) => outside([{ uri, text: spoil(text) }]).found);
  expect(found).toEqual([]);
});

test.each([
  'procedures/first/first.rebuild',
  'procedures/shared/sequences.rebuild',
  'procedures/manual/family.rebuild',
])('of %s broken off anywhere', (uri) => {
  const { text } = library.find((file) => file.uri === uri)!;
  const found: string[] = [];
  let count = 0;
  for (let end = 0; end < text.length; end += 11) {
    const here = outside([{ uri, text: text.slice(0, end) }]);
    count += here.count;
    found.push(...here.found.map((place) => `${place} at ${end}`));
  }
  expect(found).toEqual([]);
  expect(count).toBeGreaterThan(500);
});
