import { createHash } from 'node:crypto';
import { describe, expect, it, vi } from 'vitest';
import { edited, plain, start } from '../../tests/fixtures/workspace-edits.ts';
import { Random } from '../../tests/fuzz/random.ts';
import { libraryFiles } from '../../tests/library.ts';
import { rules } from '../diagnostics/index.ts';
import type { AnyRule } from '../diagnostics/rule.ts';
import type { Store } from './engine.ts';
import { Pack, packed } from './pack.ts';
import { checkFiles, type SourceFile, Workspace } from './workspace.ts';

const digest = (text: string) => createHash('sha1').update(text).digest('base64');

/** What a workspace keeps, as text. */
function keptBy({ database }: Workspace, store: Store, version = 'v') {
  const results = [...database.stored()].flatMap(({ query, key, result }) => {
    const now = result ?? store.get(query, key);
    return now === null ? [] : [{ query, key, result: now, age: 0 }];
  });
  return packed(results, version, digest);
}

const nothing: Store = { get: () => null };
const readBack = (text: string): Store => Pack.of(text, 'v', digest) ?? nothing;

/** Checks files as a process does that has the results of another, and counts what is computed, by query. */
function checkedWith(store: Store, files: readonly SourceFile[]) {
  const workspace = new Workspace({ digest, store });
  workspace.database.log = [];
  const { diagnostics } = workspace.check(files);
  const log = workspace.database.log;
  const count = (query: string) => log.filter((line) => line.startsWith(`${query} `)).length;
  return { workspace, diagnostics, count };
}

const heavy = ['parsed', 'lowered', 'outcome', 'judged', 'said in', 'result in'];

describe('what is kept between processes', () => {
  const files = libraryFiles(true);
  const first = checkedWith(nothing, files);
  const text = keptBy(first.workspace, nothing);

  it('makes the second check of the same files parse, lower and analyze nothing', () => {
    expect(heavy.map(first.count)).not.toContain(0);
    const second = checkedWith(readBack(text), files);
    expect(second.diagnostics).toEqual(first.diagnostics);
    expect(heavy.map(second.count)).toEqual(heavy.map(() => 0));
  });

  it('makes the check after an edit work out what depends on it', () => {
    const uri = files.find((file) => file.uri.includes('one-spring/procedure'))!.uri;
    const change = (file: SourceFile) =>
      file.uri === uri ? { uri, text: file.text.replace('Slow strokes', 'Slower strokes') } : file;
    const now = files.map(change);
    const second = checkedWith(readBack(text), now);
    expect(second.diagnostics).toEqual(checkFiles(now).diagnostics);
    expect(second.count('parsed')).toBeGreaterThan(0);
    // The procedure, and the one that is like it; the trees of what they read are parsed for it.
    expect(second.count('outcome')).toBe(2);
  });

  it('ends where a shop comes out the same', () => {
    const remarked = files.map((file) =>
      file.uri.endsWith('procedures/shop.rebuild')
        ? { ...file, text: file.text.replace(/^(shop [^\n]*\{)\n/mu, '$1  // a remark\n') }
        : file,
    );
    expect(remarked).not.toEqual(files);
    const second = checkedWith(readBack(text), remarked);
    expect(second.diagnostics).toEqual(first.diagnostics);
    expect(second.count('lowered')).toBe(1);
    expect(second.count('outcome')).toBe(0);
  });

  it.each([1, 2, 3])(
    'gives what a fresh check gives, from process to process, seed %i',
    { timeout: 300_000 },
    (seed) => {
      const random = new Random(seed);
      let now = [...start];
      let store = nothing;
      for (let count = 0; count < 25; count++) {
        const at = random.below(now.length);
        if (random.chance(0.1)) now = now.filter((_, index) => index !== at);
        else if (random.chance(0.15)) now = [...start.slice(0, 1 + at), ...now.slice(1 + at)];
        else if (now[at] !== undefined) now[at] = { uri: now[at].uri, text: edited(random, now[at].text) };
        if (now.length === 0) now = [...start];
        const workspace = new Workspace({ digest, store });
        expect(plain(workspace.check(now)), `edit ${count}`).toEqual(plain(checkFiles(now)));
        store = readBack(keptBy(workspace, store));
      }
    },
  );

  it('is dropped where it is of another version, cut off or altered anywhere', () => {
    expect(Pack.of(text, 'v', digest)).not.toBeNull();
    expect(Pack.of(text, 'w', digest)).toBeNull();
    const random = new Random(1);
    for (let count = 0; count < 300; count++) {
      const at = random.below(text.length);
      const sign = text[at] === 'a' ? 'b' : 'a';
      expect(Pack.of(text.slice(0, at), 'v', digest)).toBeNull();
      expect(Pack.of(text.slice(0, at) + sign + text.slice(at + 1), 'v', digest)).toBeNull();
      expect(Pack.of(text.slice(0, at) + text.slice(at + 1 + random.below(9)), 'v', digest)).toBeNull();
    }
    for (const other of ['', '\n', text + text, `${text}\n`]) expect(Pack.of(other, 'v', digest)).toBeNull();
  });

  it('has signs of one byte only, whatever is written', () => {
    const result = { text: '"µ – 🔧 \u2028 \ud800 \0"', digest: 'ä', reads: [] };
    const odd = packed([{ query: 'q', key: 'é\0\n', result, age: 3 }], 'v', digest);
    expect(/^[\n -~]*$/u.test(odd)).toBe(true);
    expect([...Pack.of(odd, 'v', digest)!.results()]).toEqual([{ query: 'q', key: 'é\0\n', result, age: 3 }]);
  });

  it.each([null, '', '{', 'null'])('is computed again where a text is none of a value: %s', (nonsense) => {
    const store = readBack(text);
    const broken: Store = {
      get(query, key) {
        const result = store.get(query, key);
        return result === null ? null : { ...result, text: nonsense };
      },
    };
    expect(checkedWith(broken, files).diagnostics).toEqual(first.diagnostics);
  });

  it('does not hold what a defect of the tool has left out', () => {
    const rule: AnyRule = rules.find((one) => one.procedure !== undefined)!;
    const spy = vi.spyOn(rule, 'procedure').mockImplementation(() => {
      throw new Error('broken');
    });
    const broken = checkedWith(nothing, files);
    spy.mockRestore();
    expect(broken.diagnostics.some((one) => one.rule === 'internal-error')).toBe(true);
    const sound = checkedWith(readBack(keptBy(broken.workspace, nothing)), files);
    expect(sound.diagnostics).toEqual(first.diagnostics);
  });
});
