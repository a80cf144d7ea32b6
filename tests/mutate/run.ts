/** `npm run mutate`: breaks every clean procedure of the library once in every way, and counts what is reported. */
import { fullMessage } from '../../language/model/diagnostic.ts';
import { libraryFiles } from '../library.ts';
import { Judge, type Judged } from './judge.ts';
import { kinds } from './mutant.ts';
import { mutantsOf } from './mutations.ts';
import { reasonFor, reasons } from './reasons.ts';

const [wanted] = process.argv.slice(2);
const shown = process.argv.includes('--killed');

/** The files that are read together when one file is broken: each procedure with what it needs. */
const library = libraryFiles();
const common = library.filter(({ uri }) => /procedures\/(shop|shared\/.*)\.rebuild$/u.test(uri));
const folders = ['one-spring', 'two-spring', 'pintle', 'like', 'manual', 'first', 'turbo'];
const judged: Judged[] = [];
for (const folder of folders) {
  const own = library.filter(({ uri }) => uri.startsWith(`procedures/${folder}/`));
  const base = folder === 'like' ? library.filter(({ uri }) => uri.startsWith('procedures/one-spring/')) : [];
  const judge = new Judge([...common, ...base, ...own]);
  // What all share is broken once, with the largest of the procedures.
  const broken = folder === 'two-spring' ? [...common, ...own] : own;
  for (const { uri, text } of broken) {
    if (wanted !== undefined && !wanted.startsWith('--') && !uri.includes(wanted)) continue;
    for (const mutant of mutantsOf(uri, text)) judged.push(judge.judge(mutant));
  }
}

const rows = kinds.map((kind) => {
  const of = judged.filter(({ mutant }) => mutant.kind === kind);
  const count = (verdict: Judged['verdict']) => of.filter((one) => one.verdict === verdict).length;
  const survivors = of.filter((one) => one.verdict === 'survived');
  return {
    kind,
    breaks: of.length,
    killed: count('killed'),
    'at the place': of.filter((one) => one.verdict === 'killed' && one.atPlace).length,
    equivalent: count('equivalent'),
    'with a reason': survivors.filter(({ mutant }) => reasonFor(mutant) !== null).length,
    survived: survivors.filter(({ mutant }) => reasonFor(mutant) === null).length,
  };
});
console.table(Object.fromEntries(rows.filter(({ breaks }) => breaks > 0).map(({ kind, ...counts }) => [kind, counts])));
const killed = judged.filter(({ verdict }) => verdict === 'killed');
const several = [1, 2, 3].map((count) => killed.filter(({ diagnostics }) => diagnostics.length === count).length);
console.log(
  `Findings for each break that was reported: one ${several[0]}, two ${several[1]}, three ${several[2]}, more ${killed.length - several.reduce((sum, count) => sum + count, 0)}.`,
);

const place = ({ mutant }: Judged) => `${mutant.file}:${mutant.line} ${mutant.kind}: ${mutant.label}`;
const survived = judged.filter((one) => one.verdict === 'survived');
for (const { name, reason } of reasons) {
  const of = survived.filter(({ mutant }) => reasonFor(mutant)?.name === name);
  if (of.length > 0)
    console.log(`\n${of.length} survived with a reason: ${reason}\n${of.map((one) => `  ${place(one)}`).join('\n')}`);
}
const open = survived.filter(({ mutant }) => reasonFor(mutant) === null);
if (open.length > 0) console.log(`\nSurvived with no reason:\n${open.map((one) => `  ${place(one)}`).join('\n')}`);
const elsewhere = killed.filter(({ atPlace }) => !atPlace);
if (elsewhere.length > 0)
  console.log(
    `\nReported, but not at the place:\n${elsewhere.map((one) => `  ${place(one)}\n    → ${one.diagnostics.map((one) => `${one.rule}: ${fullMessage(one)}`).join('\n    → ')}`).join('\n')}`,
  );
if (shown)
  for (const one of killed)
    console.log(
      `${place(one)}\n${one.diagnostics.map((one) => `    ${one.step ?? ''} ${one.rule}: ${fullMessage(one)}`).join('\n')}`,
    );
process.exitCode = open.length > 0 ? 1 : 0;
