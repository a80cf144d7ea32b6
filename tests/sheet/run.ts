/**
 * `npm run sheets -- 200 1`: random procedures with random words, printed and read back; what is lost is listed.
 * `npm run sheets -- --measure`: what each sheet of the library costs the bench; with `--write` into DEVELOPERS.md.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { root } from '../library.ts';
import { lostOf, wordsInHtml, wordsInPdf } from './conservation.ts';
import { measureLibrary } from './measure.ts';
import { randomPrint } from './random.ts';

if (process.argv.includes('--measure')) {
  const table = (await measureLibrary()).join('\n');
  console.log(table);
  if (process.argv.includes('--write')) {
    const file = join(root, 'DEVELOPERS.md');
    const [begin, end] = ['<!-- what sheets cost -->\n', '\n<!-- end of what sheets cost -->'];
    const text = readFileSync(file, 'utf8');
    const [from, to] = [text.indexOf(begin) + begin.length, text.indexOf(end)];
    writeFileSync(file, `${text.slice(0, from)}${table}${text.slice(to)}`);
  }
  process.exit();
}
const [count = 50, seed = 1] = process.argv.slice(2).map(Number);
let made = 0;
let bad = 0;
for (let at = seed * 1_000_003; at < seed * 1_000_003 + count; at++) {
  const print = randomPrint(at);
  if (print === null) continue;
  made++;
  const found = [
    ...lostOf(print, wordsInHtml(print.sheet)).map((what) => `HTML: ${what}`),
    ...lostOf(print, await wordsInPdf(print.sheet)).map((what) => `PDF: ${what}`),
  ];
  if (found.length === 0) continue;
  bad++;
  console.log(`seed ${at}, ${print.name}\n  ${found.slice(0, 5).join('\n  ')}`);
}
console.log(`${made} sheets of ${count} seeds, ${bad} with something lost`);
process.exitCode = bad > 0 || made === 0 ? 1 : 0;
