import { Database } from '../../../language/db/engine.ts';
import { buildQueries } from '../../../language/db/queries.ts';
import { Trees } from '../../../language/db/trees.ts';
import type { Procedure } from '../../../language/model/procedure.ts';
import { collectSymbols } from '../../../language/semantics/symbols.ts';
import { parse } from '../../../language/syntax/parse.ts';
import { libraryFiles } from '../../library.ts';
import type { Bench } from '../bench.ts';
import { processorTime } from '../measure/side-by-side.ts';

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

const phases = ['parse', 'symbols', 'lowering', 'an edit: parse', 'an edit: lowering', 'a new line: lowering'] as const;
type Phase = (typeof phases)[number];

const lowering: Bench = {
  title: 'what lies between text and analysis, by the number of steps: processor time',
  inProcess: true,
  async *run({ quick }) {
    const points = new Map(phases.map((phase) => [phase, [] as { size: number; value: number }[]]));
    const lengths: readonly (readonly [times: number, rounds: number])[] = quick
      ? [
          [0, 10],
          [1, 10],
          [10, 3],
        ]
      : [
          [0, 60],
          [1, 60],
          [10, 10],
          [95, 3],
        ];
    for (const [times, rounds] of lengths) {
      const text = procedureText(times);
      const sums = new Map<Phase, number>();
      let steps = 0;
      // The first rounds are for the compiler.
      for (let round = -Math.ceil(rounds / 4); round < rounds; round++)
        steps = runOnce(text, (phase, time) => {
          if (round >= 0)
            sums.set(phase, (sums.get(phase) ?? 0) + time / (phase.startsWith('an edit') ? 4 * rounds : rounds));
        });
      for (const phase of phases) points.get(phase)!.push({ size: steps, value: sums.get(phase)! });
    }
    for (const [work, all] of points) yield { kind: 'growth', work, of: 'steps', unit: 'ms', points: all, most: 1.2 };
  },
};
export default lowering;

/** Each phase once: of a new text, and of the text after edits in one statement. Gives the number of steps. */
function runOnce(text: string, add: (phase: Phase, time: number) => void): number {
  const timed = <T>(phase: Phase, work: () => T): T => {
    let made: T;
    add(
      phase,
      processorTime(() => {
        made = work();
      }),
    );
    return made!;
  };
  const tree = timed('parse', () => parse(text));
  timed('symbols', () => collectSymbols(tree.ast));
  const queries = buildQueries(new Database(), new Trees());
  const files = [...around, { uri: '0', text }];
  queries.files.set(
    '',
    files.map(({ uri }) => uri),
  );
  for (const file of files) queries.texts.set(file.uri, file.text);
  for (const { uri } of around) for (const id of queries.idsIn(uri)) queries.model(id);
  const [id] = queries.idsIn('0');
  const model = timed('lowering', () => queries.model(id!)) as Procedure;
  const at = text.indexOf('note "') + 'note "'.length;
  const line = text.lastIndexOf('\n', text.indexOf('  stage', text.length / 3));
  const words = (count: number) => `${text.slice(0, at)}${'x'.repeat(count)}${text.slice(at)}`;
  const edit = (now: string, isTimed: boolean) => {
    queries.texts.set('0', now);
    if (!isTimed) queries.model(id!);
    else {
      timed('an edit: parse', () => queries.parsed('0'));
      timed('an edit: lowering', () => queries.model(id!));
    }
  };
  edit(words(1), false);
  for (let count = 2; count < 6; count++) edit(words(count), true);
  queries.texts.set('0', `${words(5).slice(0, line + 4)}\n${words(5).slice(line + 4)}`);
  queries.parsed('0');
  timed('a new line: lowering', () => queries.model(id!));
  return [...model.stages, ...model.repairs].reduce((sum, { steps }) => sum + steps.length, 0);
}
