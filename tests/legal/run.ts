/** `npm run legal -- 50 1`: random legal procedures, each broken in every way; the survivors are listed. */
import fc from 'fast-check';
import { checkFiles } from '../../language/db/workspace.ts';
import { fullMessage } from '../../language/model/diagnostic.ts';
import { Judge } from '../mutate/judge.ts';
import { kinds } from '../mutate/mutant.ts';
import { mutantsOf } from '../mutate/mutations.ts';
import { reasonFor } from '../mutate/reasons.ts';
import { shopText } from './family.ts';
import { numbersFrom, tastes, walk } from './walk.ts';

const [count = 20, seed = 1] = process.argv.slice(2).map(Number);
const file = 'walk.rebuild';
const total = new Map<string, Record<string, number>>();
const open = new Map<string, number>();
let [made, dead] = [0, 0];
for (const [index, taste] of fc.sample(tastes, { numRuns: count, seed }).entries()) {
  const text = walk(taste, numbersFrom(seed * 1000 + index));
  if (text === null) {
    dead++;
    continue;
  }
  made++;
  const { diagnostics } = checkFiles([{ uri: file, text }]);
  if (diagnostics.length > 0) {
    console.log(`Not clean: ${diagnostics.map((one) => `${one.rule}: ${fullMessage(one)}`).join('\n')}\n${text}`);
    process.exitCode = 1;
    continue;
  }
  const judge = new Judge([{ uri: file, text }]);
  for (const mutant of mutantsOf(file, text).filter(({ line }) => line > shopText.split('\n').length)) {
    const { verdict } = judge.judge(mutant);
    const excused = verdict === 'survived' && reasonFor(mutant) !== null;
    const row = total.get(mutant.kind) ?? { breaks: 0, killed: 0, equivalent: 0, 'with a reason': 0, survived: 0 };
    total.set(mutant.kind, row);
    row.breaks!++;
    row[excused ? 'with a reason' : verdict]!++;
    if (verdict === 'survived' && !excused) {
      const label = `${mutant.kind}: ${mutant.label}`;
      open.set(label, (open.get(label) ?? 0) + 1);
    }
  }
}
console.log(`${made} procedures, ${dead} walks that reached a dead end`);
console.table(Object.fromEntries(kinds.flatMap((kind) => (total.has(kind) ? [[kind, total.get(kind)]] : []))));
for (const [label, times] of [...open].sort((a, b) => b[1] - a[1])) console.log(`${times} × ${label}`);
if (open.size > 0) process.exitCode = 1;
