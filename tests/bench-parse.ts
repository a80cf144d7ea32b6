/**
 * Speed of the parser, as ratios of things measured side by side in one run: Langium's parser, ours, ours after an edit of one
 * statement; and `yaml`, if it is installed (`npm install --no-save yaml`), on a text of the same length. `npm run bench`.
 */
import { type Parsed, parse } from '../language/syntax/parse.ts';
import { libraryFiles } from './library.ts';
import { langiumParse } from './parse/reference.ts';

const { text: short } = libraryFiles().find(({ uri }) => uri.includes('one-spring/procedure'))!;

/** The stages of the procedure many times, under names of their own. */
function longer(times: number): string {
  const from = short.indexOf('  stage');
  const stages = short.slice(from, short.lastIndexOf('}'));
  const named = Array.from({ length: times }, (_, index) =>
    stages.replace(/^( {2}(?:stage|repair) \S+)/gmu, `$1-${index}`),
  );
  return `${short.slice(0, from)}${named.join('')}}\n`;
}

const peer = await import('yaml' as string).then(
  ({ parseDocument }: { parseDocument: (text: string) => unknown }) => parseDocument,
  () => null,
);

/** Stages with lists of steps, each a map of its words. */
function yamlOf(length: number): string {
  const stage = (index: number) =>
    `stage-${index}:\n  at: tester\n  steps:\n${'    - verb: torque\n      objects: [nut, body]\n      to: 60 N·m ±5\n      note: "In two passes, then mark it"\n'.repeat(10)}`;
  let text = '';
  for (let index = 0; text.length < length; index++) text += stage(index);
  return text;
}

/** Milliseconds of this thread alone, so that what else runs on the machine does not count. */
function used(): number {
  const { user, system } = process.threadCpuUsage();
  return (user + system) / 1000;
}

/** Medians of several kinds of work, each done some times in a row before the next. */
function medians(rounds: number, times: number, work: readonly (() => unknown)[]): number[] {
  const all = work.map((): number[] => []);
  for (let round = 0; round < rounds; round++)
    for (const [index, one] of work.entries()) {
      const start = used();
      for (let time = 0; time < times; time++) one();
      all[index]!.push((used() - start) / times);
    }
  return all.map((one) => one.sort((a, b) => a - b)[Math.floor(rounds / 2)]!);
}

for (const [steps, copies, rounds, times] of [
  [100, 1, 15, 40],
  [10_000, 100, 9, 1],
] as const) {
  const text = copies === 1 ? short : longer(copies);
  const at = text.indexOf('torque', text.length / 2) + 'torque'.length;
  const edited = `${text.slice(0, at)} spring,${text.slice(at)}`;
  const yaml = yamlOf(text.length);
  let before: Parsed = parse(text);
  let isEdited = false;
  const edit = () => {
    isEdited = !isEdited;
    before = parse(isEdited ? edited : text, before);
  };
  const work = [() => langiumParse(text), () => parse(text), edit, ...(peer === null ? [] : [() => peer(yaml)])];
  medians(2, times, work);
  const [langium, ours, kept, ofYaml] = medians(rounds, times, work);
  const shown = (name: string, time: number | undefined) =>
    time === undefined ? '' : `${name} ${time.toFixed(2)} ms (${(time / langium!).toFixed(4)})`;
  const all = [shown('Langium', langium), shown('ours', ours), shown('after an edit', kept), shown('yaml', ofYaml)];
  console.log(`parse of ${steps} steps, ${text.length} characters: ${all.filter((one) => one !== '').join(', ')}`);
}
if (peer === null) console.log('yaml is not installed: not compared.');
