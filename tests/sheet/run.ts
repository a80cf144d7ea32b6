/**
 * `npm run sheets -- 200 1`: random procedures with random words, printed and read back; what is lost is listed.
 * `npm run sheets -- --measure`: what each sheet of the library costs the bench.
 */
import { lostOf, wordsInHtml, wordsInPdf } from './conservation.ts';
import { measureLibrary } from './measure.ts';
import { randomPrint } from './random.ts';

if (process.argv.includes('--measure')) {
  for (const line of await measureLibrary()) console.log(line);
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
