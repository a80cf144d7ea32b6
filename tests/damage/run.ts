/**
 * Breaks the library in every way that `damagesOf` knows, and makes everything of it: `node tests/damage/run.ts [STEP]`,
 * every STEP-th damage (else all). Prints what was thrown; exit code 1 if anything was.
 */
import { libraryFiles } from '../library.ts';
import { damagesOf, thrown } from './damages.ts';

const step = Number(process.argv[2] ?? 1);
const all = libraryFiles(true);
let tried = 0;
let failed = 0;
for (const file of all) {
  const damages = damagesOf(file.text).filter((_, index) => index % step === 0);
  const found = thrown(file, all, damages);
  tried += damages.length;
  failed += found.length;
  process.stdout.write(`${file.uri}: ${damages.length} damages, ${found.length} thrown\n`);
  for (const one of found) process.stdout.write(`  ${one}\n`);
}
process.stdout.write(`${tried} damages, ${failed} thrown\n`);
process.exitCode = failed === 0 ? 0 : 1;
