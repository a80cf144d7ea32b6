/**
 * How long a workspace of many procedures takes, and what it holds: one line of JSON, in milliseconds and bytes.
 * Arguments: how many procedures, and the root of the source that is measured, for another state of it beside this one.
 */
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { libraryFiles, root } from './library.ts';

interface Workspace {
  check(files: readonly { uri: string; text: string }[]): {
    readonly diagnostics?: readonly unknown[];
    readonly findings?: readonly unknown[];
  };
}

const count = Number(process.argv[2]);
const source = process.argv[3] ?? root;
// Another state of the source may have the class under its former name, and diagnostics as findings.
const { Workspace: Current, Checker: Former } = (await import(
  pathToFileURL(join(source, 'language/db/workspace.ts')).href
)) as Readonly<Partial<Record<'Workspace' | 'Checker', new () => Workspace>>>;

const library = libraryFiles();
const one = library.find(({ uri }) => uri.endsWith('one-spring/procedure.rebuild'))!.text;
const around = library.filter(({ uri }) =>
  /(?:^procedures\/shop|one-spring\/family|shared\/sequences)\.rebuild$/u.test(uri),
);
const files = [
  ...around,
  ...Array.from({ length: count }, (_, index) => ({
    uri: `procedures/many/${index}.rebuild`,
    text: one.replaceAll('rebuild-one-spring', `rebuild-one-spring-${index}`),
  })),
];

const workspace = new (Current ?? Former)!();
let diagnostics = 0;
const timed = (now: typeof files) => {
  const begin = performance.now();
  const result = workspace.check(now);
  diagnostics = (result.diagnostics ?? result.findings)!.length;
  return performance.now() - begin;
};
const middle = (times: readonly number[]) => [...times].sort((a, b) => a - b)[Math.floor(times.length / 2)]!;
const repeated = (times: number, change: (run: number) => typeof files) =>
  middle(Array.from({ length: times }, (_, run) => timed(change(run))));

const first = timed(files);
const nothing = repeated(5, () => files.map((file) => ({ ...file })));
const last = files.at(-1)!;
/** A word in a step of one procedure. */
const keystroke = repeated(9, (run) => [
  ...files.slice(0, -1),
  { ...last, text: last.text.replace('Slow strokes', `Slow strokes${'x'.repeat(run + 1)}`) },
]);
const newLine = repeated(5, (run) => [
  ...files.slice(0, -1),
  { ...last, text: last.text.replace('  stage as-found', `${'\n'.repeat(run + 1)}  stage as-found`) },
]);
const newName = repeated(count > 200 ? 1 : 3, (run) => [
  ...files,
  { uri: 'procedures/name.rebuild', text: `sequence new-name-${run} {\n  wait 5 min\n}\n` },
]);
(globalThis as { gc?: () => void }).gc?.();
const memory = process.memoryUsage().heapUsed;
console.log(JSON.stringify({ count, first, nothing, keystroke, newLine, newName, memory, diagnostics }));
