/**
 * Random and hostile input to everything that takes an author's text, in a thread that is ended when it does not answer.
 * `npm run fuzz -- MINUTES SEED` goes on with it by hand. What it found is in fixtures/, and stays away.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { afterAll, describe, expect, it } from 'vitest';
import { type FuzzCase, keyOf } from './case.ts';
import { caseAt } from './generate.ts';
import { bombs } from './generators/bombs.ts';
import { minimized } from './minimize.ts';
import { Watched } from './watched.ts';

interface Fixture {
  /** The failure that it showed, `target: place`. */
  readonly key: string;
  readonly versions: FuzzCase['versions'];
}

const seed = 1;
const cases = 24;

const folder = fileURLToPath(new URL('./fixtures/', import.meta.url));
const fixtures = readdirSync(folder)
  .filter((name) => name.endsWith('.json'))
  .sort();
const watched = new Watched(60_000);
afterAll(() => watched.close());

const keysOf = async (one: FuzzCase) => (await watched.failuresOf(one)).map(keyOf);

describe('what was found once', () => {
  it.each(fixtures)('%s', async (name) => {
    const { versions } = JSON.parse(readFileSync(folder + name, 'utf8')) as Fixture;
    // Nothing new in its place either.
    expect(await keysOf({ kind: name, versions })).toEqual([]);
  });
});

it(`holds on ${cases} cases of seed ${seed}`, async () => {
  for (let index = 0; index < cases; index++) {
    const one = caseAt(seed, index);
    const found = await watched.failuresOf(one);
    expect(found, `seed ${seed}, case ${index} (${one.kind}): npm run fuzz -- 5 ${seed} makes it small`).toEqual([]);
  }
});

it('holds on every built text of the smaller size', async () => {
  for (const { name, sizes, by } of bombs) {
    const one = { kind: name, versions: [[{ uri: 'bomb.rebuild', text: by(sizes[0]!) }]] };
    expect(await keysOf(one), name).toEqual([]);
  }
});

describe('the fuzzer itself', () => {
  it('makes the same case of the same seed', () => {
    for (let index = 0; index < 40; index++) expect(caseAt(7, index)).toEqual(caseAt(7, index));
  });

  it('makes every kind', () => {
    const kinds = new Set(Array.from({ length: 100 }, (_, index) => caseAt(1, index).kind));
    expect([...kinds].sort()).toEqual(['bombs', 'bytes', 'hostile', 'splices', 'tokens', 'typing']);
  });

  it('makes a case small', async () => {
    const text = `family f {\n  part body\n  part nut on body\n}\n${'// nothing\n'.repeat(40)}procedure p for f {\n}\n`;
    const one = {
      kind: 'x',
      versions: [
        [{ uri: 'a', text: 'shop s { }' }],
        [
          { uri: 'a', text },
          { uri: 'b', text },
        ],
      ],
    };
    const shows = async ({ versions }: FuzzCase) => versions.flat().some((file) => /nut/u.test(file.text));
    const { versions } = await minimized(one, shows);
    expect(versions).toEqual([[{ uri: expect.any(String), text: 'nut' }]]);
  });

  it('sees a script that got out, and an answer that does not come', async () => {
    const { intruder, madeOf } = await import('./pages.ts');
    const usual = madeOf('<p class="x"><a href="#y">z</a></p>');
    expect(intruder('<p class="q"><a href="#z">z</a></p>', usual)).toBeNull();
    expect(intruder('<p><script>1</script></p>', usual)).toBe('element script');
    expect(intruder('<p onclick="1"></p>', usual)).toBe('attribute p.onclick');
    expect(intruder('<p><a href="javascript:1">z</a></p>', usual)).toBe('a to javascript:');
    const impatient = new Watched(1);
    expect(await impatient.failuresOf(caseAt(1, 0))).toEqual([expect.objectContaining({ at: 'hang' })]);
    await impatient.close();
  });
});
