import { chmodSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { checkFiles, type SourceFile, Workspace } from '../../../language/db/workspace.ts';
import { start } from '../../../tests/fixtures/workspace-edits.ts';
import { Random } from '../../../tests/fuzz/random.ts';
import { digest } from './digest.ts';
import { ResultCache } from './result-cache.ts';

const files = start;
const fresh = checkFiles(files).diagnostics;
const root = mkdtempSync(join(tmpdir(), 'handtight-cache-'));
afterAll(() => rmSync(root, { recursive: true, force: true }));

/** A run of the program: what it finds, and how much of it it had to analyze. */
function run(
  folder: string,
  { texts = files, version = 'v', name = 'w', areas = undefined as undefined | ['sources'] } = {},
) {
  const cache = new ResultCache({ folder, version }, name, areas);
  const workspace = new Workspace({ digest, store: cache });
  workspace.database.log = [];
  const { diagnostics } = workspace.check(texts as readonly SourceFile[]);
  const analyzed = workspace.database.log.filter((line) => line.startsWith('outcome ')).length;
  cache.keep(workspace.database, (uri) => workspace.jobsOf(uri) !== null);
  return { diagnostics, analyzed };
}

const folderOf = (name: string) => join(root, name);
const kept = (folder: string) => readdirSync(folder).map((name) => join(folder, name));

describe('results that are kept on the disk', () => {
  it('are taken over by the next run, and by no other version or workspace', () => {
    const folder = folderOf('plain');
    expect(run(folder).analyzed).toBeGreaterThan(0);
    expect(run(folder)).toEqual({ diagnostics: fresh, analyzed: 0 });
    expect(run(folder, { version: 'w' }).analyzed).toBeGreaterThan(0);
    expect(run(folder, { version: 'w' }).analyzed).toBe(0);
    expect(run(folder, { name: 'x' }).analyzed).toBeGreaterThan(0);
    // Of jobs alone nothing is read where none of them is wanted.
    expect(run(folder, { version: 'w', areas: ['sources'] })).toEqual({ diagnostics: fresh, analyzed: 0 });
  });

  it('are not written again by a run that adds nothing', () => {
    const folder = folderOf('still');
    run(folder);
    const before = kept(folder).map((path) => readFileSync(path, 'latin1'));
    run(folder);
    expect(kept(folder).map((path) => readFileSync(path, 'latin1'))).toEqual(before);
  });

  it('are worked out again where a file is altered, cut off, half written, empty or a folder', () => {
    const folder = folderOf('damaged');
    run(folder);
    const sound = kept(folder).map((path) => ({ path, bytes: readFileSync(path) }));
    const random = new Random(7);
    const damages: ((bytes: Buffer) => Buffer)[] = [
      ...Array.from({ length: 5 }, () => (bytes: Buffer) => {
        const other = Buffer.from(bytes);
        other[random.below(other.length)]! ^= 1 << random.below(8);
        return other;
      }),
      ...Array.from({ length: 3 }, () => (bytes: Buffer) => bytes.subarray(0, random.below(bytes.length))),
      (bytes) => Buffer.concat([bytes.subarray(0, bytes.length / 2), Buffer.alloc(bytes.length / 2)]),
      () => Buffer.alloc(0),
      () => Buffer.from('{"not": "ours"}\n'),
    ];
    for (const damage of damages) {
      for (const { path, bytes } of sound) writeFileSync(path, damage(bytes));
      expect(run(folder).diagnostics).toEqual(fresh);
      // It is whole again.
      expect(run(folder)).toEqual({ diagnostics: fresh, analyzed: 0 });
    }
    for (const { path } of sound) {
      rmSync(path);
      mkdirSync(path);
    }
    expect(run(folder).diagnostics).toEqual(fresh);
  });

  it('are done without where the folder cannot be made, read or written', () => {
    const blocked = folderOf('blocked');
    writeFileSync(blocked, 'a file where the folder should be');
    expect(run(blocked).diagnostics).toEqual(fresh);
    expect(run(join(blocked, 'below')).diagnostics).toEqual(fresh);
    const locked = folderOf('locked');
    run(locked);
    chmodSync(locked, 0o500);
    for (const path of kept(locked)) chmodSync(path, 0o000);
    expect(
      run(locked, { texts: [...files, { uri: 'new.rebuild', text: 'sequence s {\n}\n' }] }).diagnostics.length,
    ).toBeGreaterThanOrEqual(fresh.length);
    expect(run(locked).diagnostics).toEqual(fresh);
    chmodSync(locked, 0o700);
  });

  it('of files that are gone are let go after some runs that kept something', () => {
    const folder = folderOf('old');
    run(folder, { texts: [...files, { uri: 'gone.rebuild', text: 'sequence gone-one {\n  wait 5 min\n}\n' }] });
    const holds = () => kept(folder).some((path) => readFileSync(path, 'latin1').includes('gone.rebuild'));
    const more = (count: number) => ({ uri: 'more.rebuild', text: `sequence s${count} {\n  wait 5 min\n}\n` });
    run(folder, { texts: [...files, more(0)] });
    expect(holds()).toBe(true);
    for (let count = 1; count < 25; count++) run(folder, { texts: [...files, more(count)] });
    expect(holds()).toBe(false);
  });
});
