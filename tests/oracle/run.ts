/**
 * `npm run oracle -- 10000 [seed]`: random procedures, every concrete run against the flow analysis. Of each class of
 * difference it prints the smallest text. `--quick` does not shrink; `--strict` makes the oracle follow the document
 * alone, `--without=NAME` without one of the known deviations.
 */
import fc from 'fast-check';
import { compare, type Side, shrink } from './compare.ts';
import { allDeviations, type Deviation, knownMissed } from './deviations.ts';
import { procedureTexts } from './random.ts';

const numbers = process.argv.slice(2).filter((word) => /^\d+$/u.test(word));
const count = Number(numbers[0] ?? 1000);
const seed = Number(numbers[1] ?? 1);
const departures: ReadonlySet<Deviation> = process.argv.includes('--strict')
  ? new Set()
  : new Set([...allDeviations].filter((name) => !process.argv.includes(`--without=${name}`)));
/** Texts asked of the generator at once. */
const batch = 500;

const total = {
  procedures: 0,
  agree: 0,
  uncounted: 0,
  replayOnly: 0,
  missed: 0,
  knownMissed: 0,
  unread: 0,
  givenUp: 0,
  found: 0,
  steps: 0,
};
const classes = new Map<string, { count: number; example: string }>();
const unread = new Map<string, number>();

const started = performance.now();
for (let done = 0; done < count; done += batch) {
  const size = Math.min(batch, count - done);
  for (const text of fc.sample(procedureTexts, { seed: seed * 1_000_003 + done, numRuns: size })) {
    const result = compare(text, departures);
    total.procedures++;
    total.found += result.found;
    total.steps += result.steps;
    if (result.unread.length > 0) {
      total.unread++;
      for (const message of result.unread) unread.set(message, (unread.get(message) ?? 0) + 1);
    } else if (!result.complete) total.givenUp++;
    else if (result.missed.some((diagnostic) => knownMissed[diagnostic.split(' ')[0]!] === undefined)) total.missed++;
    else if (result.missed.length > 0) total.knownMissed++;
    else if (result.replayOnly.length > 0) total.replayOnly++;
    else if (result.uncounted.length > 0) total.uncounted++;
    else total.agree++;
    for (const side of ['missed', 'uncounted', 'replayOnly'] as const) {
      for (const rule of new Set(result[side].map((diagnostic) => diagnostic.split(' ')[0]!))) {
        const name = `${side} ${rule}`;
        const known = classes.get(name);
        if (known === undefined) classes.set(name, { count: 1, example: text });
        else {
          known.count++;
          if (text.length < known.example.length) known.example = text;
        }
      }
    }
  }
}

const shrinking = !process.argv.includes('--quick');
console.log(`${((performance.now() - started) / 1000).toFixed(1)} s, seed ${seed}`);
console.log(total);
for (const [message, times] of unread) console.log(`unread ${times}×: ${message}`);
for (const [name, { count: times, example }] of [...classes].sort()) {
  const [side, rule] = name.split(' ') as [Side, string];
  const small = !shrinking ? example : shrink(example, rule, side, departures);
  const result = compare(small, departures);
  console.log(
    `\n==== ${name}: in ${times} procedures\n${small.slice(small.indexOf('family'))}\n→ ${side}: ${result[side].join('; ')}`,
  );
}
process.exitCode = total.missed > 0 ? 1 : 0;
