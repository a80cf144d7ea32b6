/**
 * `npm run fuzz -- MINUTES SEED`, or `npm run fuzz -- --cases=COUNT SEED`, which is the same on every machine: random and
 * hostile input to everything that takes an author's text. Each defect is reported once, reduced, and written into
 * tests/fuzz/found/ as a fixture.
 */
import { mkdirSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { keyOf } from './case.ts';
import { caseAt } from './generate.ts';
import { minimized } from './minimize.ts';
import { Watched } from './watched.ts';

const words = process.argv.slice(2);
const [counted] = words.flatMap((word) => /^--cases=(\d+)$/u.exec(word)?.[1] ?? []).map(Number);
const numbers = words.filter((word) => /^[\d.]+$/u.test(word)).map(Number);
const [minutes = 1, seed = 1] = counted === undefined ? numbers : [Number.POSITIVE_INFINITY, ...numbers];
const found = fileURLToPath(new URL('./found/', import.meta.url));
const end = Date.now() + minutes * 60_000;
const watched = new Watched(20_000);
const seen = new Map<string, number>();
let cases = 0;

console.log(`seed ${seed}, ${counted === undefined ? `${minutes} min` : `${counted} cases`}`);
for (; Date.now() < end && cases < (counted ?? Number.POSITIVE_INFINITY); cases++) {
  const one = caseAt(seed, cases);
  for (const failure of await watched.failuresOf(one)) {
    const key = keyOf(failure);
    seen.set(key, (seen.get(key) ?? 0) + 1);
    if (seen.get(key)! > 1) continue;
    console.log(`\n${key}\n  ${failure.what.replaceAll('\n', '\n  ')}\n  case ${cases}, ${one.kind}`);
    const hangs = failure.at === 'hang' || failure.at === 'memory';
    const small = await minimized(
      one,
      async (smaller) => (await watched.failuresOf(smaller)).some((other) => keyOf(other) === key),
      hangs ? 12 : 400,
    );
    mkdirSync(found, { recursive: true });
    const name = key
      .replace(/[^A-Za-z0-9]+/gu, '-')
      .replace(/^-|-$/gu, '')
      .slice(0, 80);
    writeFileSync(
      `${found}${name}.json`,
      `${JSON.stringify({ key, what: failure.what, versions: small.versions }, null, 2)}\n`,
    );
    const size = small.versions.flat().reduce((sum, { text }) => sum + text.length, 0);
    console.log(`  made small to ${size} characters: tests/fuzz/found/${name}.json`);
  }
}
await watched.close();
console.log(`${cases} cases, ${seen.size} defects`);
process.exitCode = seen.size > 0 ? 1 : 0;
