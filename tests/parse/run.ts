/**
 * `npm run parse -- COUNT SEED`: parses random edits of all texts of the project, and random texts, with Langium's parser and with
 * ours, from nothing and after each edit. Prints the first difference and ends with 1 if there is one.
 */
import { statesOf } from './cases.ts';
import { whatIsWrong } from './check.ts';

const [count = 2000, seed = 1] = process.argv.slice(2).map(Number);
for (let index = 0; index < count; index++) {
  const states = statesOf(seed, index);
  const wrong = whatIsWrong(states);
  if (wrong === null) continue;
  console.log(`seed ${seed}, case ${index}: ${wrong}\n${states.map((text) => JSON.stringify(text)).join('\n')}`);
  process.exitCode = 1;
  break;
}
if (process.exitCode !== 1) console.log(`${count} cases of seed ${seed}: no difference`);
