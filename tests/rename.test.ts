/** A name of each kind in each file of the library, renamed: afterwards the same is found, at the same places. */
import { expect, test } from 'vitest';
import { edited } from '../language/db/fixes.ts';
import { type SourceFile, Workspace } from '../language/db/workspace.ts';
import { allDeclared } from '../language/ide/declared.ts';
import { renameAt } from '../language/ide/rename.ts';
import { snapshotOf } from '../language/ide/snapshot.ts';
import { libraryFiles } from './library.ts';

const files = libraryFiles();
const snapshot = snapshotOf(files);
const workspace = new Workspace();
const findings = (of: readonly SourceFile[]) =>
  workspace.check(of).diagnostics.map(({ rule, source }) => `${source.file}:${source.range.start.line + 1} ${rule}`);

/** They are declared by the name of a part, or have none. */
const nameless = new Set(['joint', 'adjuster', 'unit', 'only', 'step']);
const seen = new Set<string>();
const names = allDeclared(snapshot.result).filter(({ uri, symbol: { kind } }) => {
  const key = `${uri} ${kind}`;
  return !nameless.has(kind) && !seen.has(key) && seen.add(key);
});

test('the same is found in the library whatever its names are', () => {
  expect(names.length).toBeGreaterThan(60);
  const before = findings(files);
  for (const { uri, symbol } of names) {
    const { line, character } = symbol.nameRange.start;
    const text = files.find((file) => file.uri === uri)!.text.split('\n')[line]!;
    const name = symbol.kind === 'face' ? symbol.name.replace(/^.*\./u, '') : symbol.name;
    const position = { line, character: text.indexOf(name, symbol.kind === 'face' ? text.indexOf('.') : character) };
    const what = `${uri}:${line + 1} ${symbol.kind} ${symbol.name}`;
    const renamed = renameAt(snapshot, uri, position, 'called-otherwise');
    expect(renamed, what).toMatchObject({ kind: 'changes' });
    if (renamed.kind === 'refused') continue;
    expect(renamed.edits.length, what).toBeGreaterThan(0);
    const put = files.map((file) => ({
      ...file,
      text: edited(
        file.text,
        renamed.edits.filter(({ source }) => source.file === file.uri),
      ),
    }));
    expect(findings(put), what).toEqual(before);
  }
});
