/**
 * `npm run edits -- COUNT SEED`: a session of the language server with random edits, compared with a check from nothing after
 * each hundred. Prints the first difference and ends with 1 if there is one.
 */
import { isDeepStrictEqual } from 'node:util';
import { Random } from '../fuzz/random.ts';
import { EditingSession } from './session.ts';

const [count = 10_000, seed = 1] = process.argv.slice(2).map(Number);
const session = new EditingSession(new Random(seed));
const pause = (time: number) => new Promise((resolve) => setTimeout(resolve, time));
await session.begin();
for (let step = 1; step <= count && process.exitCode !== 1; step++) {
  session.step();
  if (step % 7 === 0) await pause(5);
  if (step % 100 !== 0) continue;
  await session.settled();
  const expected = session.expected();
  for (let tries = 0; tries < 50 && !isDeepStrictEqual(session.published, expected); tries++) await pause(100);
  if (isDeepStrictEqual(session.published, expected) && session.refused.length === 0) continue;
  console.log(
    `seed ${seed}, edit ${step}: ${session.refused[0] ?? 'the findings are others than those of a fresh check'}`,
  );
  for (const uri of new Set([...session.published.keys(), ...expected.keys()])) {
    const [one, other] = [session.published.get(uri), expected.get(uri)];
    if (!isDeepStrictEqual(one, other)) console.log(uri, JSON.stringify(one, null, 1), JSON.stringify(other, null, 1));
  }
  process.exitCode = 1;
}
if (process.exitCode !== 1)
  console.log(`${count} edits of seed ${seed}: no difference, ${session.canceled} requests canceled`);
await session.end();
process.exit();
