/**
 * What lies between the tree and the analysis: CPU time of each phase for procedures of some lengths, from nothing and after an edit,
 * how it grows, and what is kept. BEFORE is a worktree of another state of the source, measured in turns with this one.
 * `npm run bench`; by itself with `node --expose-gc` for the bytes.
 */
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { libraryFiles, root } from './library.ts';

type Phase =
  | 'parse'
  | 'symbols'
  | 'fingerprints'
  | 'lowering'
  | 'links'
  | 'edit: parse'
  | 'edit: lowering'
  | 'new line: lowering';
type Timings = Map<Phase, number>;

const library = libraryFiles();
const whole = library.find(({ uri }) => uri.endsWith('one-spring/procedure.rebuild'))!.text;
const around = library.filter(({ uri }) =>
  /(?:^procedures\/shop|one-spring\/family|shared\/sequences)\.rebuild$/u.test(uri),
);

/** The stages and repairs of the procedure some times, under names of their own; 0: without those after the last wash. */
function procedureText(times: number): string {
  const [from, sequences] = [whole.indexOf('  stage'), whole.indexOf('  sequence open')];
  const blocks = whole.slice(from, sequences);
  if (times === 0)
    return whole.slice(0, whole.indexOf('  stage build')) + whole.slice(whole.indexOf('  repair reshim'));
  const named = Array.from({ length: times }, (_, index) =>
    blocks
      .replace(/^( {2}stage \S+)/gmu, `$1-${index}`)
      .replace(/\b(?:reshim|clean-seat|renew-nozzle|other-pair)\b/gu, `$&-${index}`),
  );
  return whole.slice(0, from) + named.join('') + whole.slice(sequences);
}

/** Milliseconds of this thread alone, so that what else runs on the machine does not count. */
function used(): number {
  const { user, system } = process.threadCpuUsage();
  return (user + system) / 1000;
}

async function sideOf(source: string) {
  const module = (path: string) => import(pathToFileURL(join(source, path)).href);
  const { Database } = await module('language/db/engine.ts');
  const { Trees } = await module('language/db/trees.ts');
  const { buildQueries } = await module('language/db/queries.ts');
  const { buildFingerprint } = await module('language/db/declarations.ts');
  const { collectSymbols } = await module('language/semantics/symbols.ts');
  const { parse } = await module('language/syntax/parse.ts');

  /** A workspace in which all is lowered but the procedures of some texts. */
  const opened = (texts: readonly string[]) => {
    const trees = new Trees();
    const queries = buildQueries(new Database(), trees);
    const other = { uri: 'other', text: whole.replace(/^procedure \S+/mu, '$&-other') };
    const base = [...around, other];
    const files = [...base, ...texts.map((text, index) => ({ uri: `${index}`, text }))];
    const uris = files.map(({ uri }) => uri);
    queries.files.set('', uris);
    for (const { uri, text } of files) queries.texts.set(uri, text);
    for (const { uri } of base) for (const id of queries.idsIn(uri)) queries.model(id);
    const ids: string[] = texts.map((_, index) => queries.idsIn(`${index}`)[0]);
    return { trees, queries, ids };
  };

  return {
    /** CPU time of each phase, once. */
    run(text: string, add: (phase: Phase, time: number) => void): number {
      const timed = <T>(phase: Phase, work: () => T): T => {
        const start = used();
        const made = work();
        add(phase, used() - start);
        return made;
      };
      const tree = timed('parse', () => parse(text));
      timed('symbols', () => collectSymbols(tree.ast));
      const { trees, queries, ids } = opened([text]);
      const id = ids[0]!;
      timed('fingerprints', () => {
        const read = trees.tree('0', text);
        for (const node of trees.nodes('0', text).values()) buildFingerprint(node, text, read, (own: string) => own);
      });
      const model = timed('lowering', () => queries.model(id));
      timed('links', () => queries.reported(id));
      const at = text.indexOf('note "') + 'note "'.length;
      const line = text.lastIndexOf('\n', text.indexOf('  stage', text.length / 3));
      const edit = (now: string, first: Phase | null, second: Phase | null) => {
        queries.texts.set('0', now);
        const read = () => queries.parsed('0');
        if (first === null) read();
        else timed(first, read);
        if (second === null) queries.model(id);
        else timed(second, () => queries.model(id));
      };
      const words = (count: number) => `${text.slice(0, at)}${'x'.repeat(count)}${text.slice(at)}`;
      edit(words(1), null, null);
      for (let count = 2; count < 6; count++) edit(words(count), 'edit: parse', 'edit: lowering');
      edit(`${words(5).slice(0, line + 4)}\n${words(5).slice(line + 4)}`, null, 'new line: lowering');
      return [...model.stages, ...model.repairs].reduce((sum: number, { steps }) => sum + steps.length, 0);
    },
    /** Bytes that each of many procedures keeps, with its links; null: `--expose-gc` is missing. */
    bytes(text: string, count: number): number | null {
      const { gc } = globalThis as { gc?: () => void };
      if (gc === undefined) return null;
      const named = Array.from({ length: count }, (_, index) => text.replace(/^procedure \S+/mu, `$&-${index}`));
      const { queries, ids } = opened(named);
      gc();
      const before = process.memoryUsage().heapUsed;
      for (const id of ids) queries.reported(id);
      gc();
      return (process.memoryUsage().heapUsed - before) / count;
    },
  };
}

const before = process.env.BEFORE;
const sides = await Promise.all([...(before === undefined ? [] : [before]), root].map(sideOf));
const shown = (value: number) => value.toFixed(value < 10 ? 2 : 1);

const grown = new Map<Phase, [number, number][]>();
const lengths = [
  [0, 60],
  [1, 60],
  [10, 10],
  [95, 3],
] as const;
for (const [times, rounds] of lengths) {
  const text = procedureText(times);
  const sums = sides.map((): Timings => new Map());
  let steps = 0;
  for (let round = -Math.ceil(rounds / 4); round < rounds; round++)
    for (const [index, side] of sides.entries())
      steps = side.run(text, (phase, time) => {
        const share = phase.startsWith('edit') ? 4 * rounds : rounds;
        if (round >= 0) sums[index]!.set(phase, (sums[index]!.get(phase) ?? 0) + time / share);
      });
  const last = sums.at(-1)!;
  console.log(`${steps} steps, CPU time in ms${sides.length > 1 ? ' (before → now)' : ''}:`);
  for (const phase of last.keys()) {
    console.log(`  ${phase.padEnd(20)} ${sums.map((one) => shown(one.get(phase)!).padStart(8)).join(' →')}`);
    grown.set(phase, [...(grown.get(phase) ?? []), [steps, last.get(phase)!]]);
  }
  const kept = sides.map((side) => side.bytes(text, times === 95 ? 2 : 40));
  if (kept.every((one) => one !== null))
    console.log(`  kept                 ${kept.map((one) => `${(one / 1000).toFixed(0)} kB`.padStart(8)).join(' →')}`);
}
console.log('growth, as the exponent of steps from the second to the last (linear: 1):');
for (const [phase, points] of grown) {
  const [few, short] = points[1]!;
  const [many, long] = points.at(-1)!;
  // What takes next to nothing has no exponent.
  if (long > 1) console.log(`  ${phase.padEnd(20)} ${(Math.log(long / short) / Math.log(many / few)).toFixed(2)}`);
}
