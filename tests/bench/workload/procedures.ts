/**
 * Procedures in any number and of any length, made of the library's, which check clean: what a slip costs is measured by
 * putting one in.
 */
import { libraryFiles } from '../../library.ts';

/** A file of a workspace: its path in the folder, and its text. */
export interface WorkloadFile {
  readonly path: string;
  readonly text: string;
}

const library = libraryFiles().map(({ uri, text }) => ({ path: uri.replace(/^procedures\//u, ''), text }));

export function libraryFile(path: string): WorkloadFile {
  const file = library.find((one) => one.path === path);
  if (file === undefined) throw new Error(`The library has no ${path}.`);
  return file;
}

/** What every procedure here needs: the shop and the sequences that all share. */
export const shared: readonly WorkloadFile[] = [libraryFile('shop.rebuild'), libraryFile('shared/sequences.rebuild')];

/** A name as it is written, hyphens included, with a number to make it one of its own. */
const renamed = (text: string, name: string, number: number) =>
  text.replace(new RegExp(`(?<![\\w-])${name}(?![\\w-])`, 'gu'), `$&-${number}`);

/** Folders with a family and a procedure for it at the shared shop, and the names that these declare. */
const sources = ['one-spring', 'two-spring', 'pintle'].map((folder) => {
  const family = libraryFile(`${folder}/family.rebuild`);
  const procedure = libraryFile(`${folder}/procedure.rebuild`);
  const [familyName, procedureName] = [family, procedure].map(
    ({ text }) => /^(?:family|procedure) (\S+)/mu.exec(text)![1]!,
  );
  return { family, procedure, familyName: familyName!, procedureName: procedureName! };
});

/** Path of the procedure that the benches edit: it is the one-spring procedure, of about 100 steps. */
export const editedPath = 'many/0/procedure-0.rebuild';

/** Path of the long procedure. */
export const longPath = 'long.rebuild';

/** How many procedures there are to a family. */
const perFamily = 5;

/** So many procedures of the library, five in turn for each family, all under names of their own. */
export function manyProcedures(count: number): readonly WorkloadFile[] {
  const files = Array.from({ length: count }, (_, index): WorkloadFile[] => {
    const folder = Math.floor(index / perFamily);
    const { family, procedure, familyName, procedureName } = sources[folder % sources.length]!;
    const ofFamily = (text: string) => renamed(text, familyName, folder);
    const own = {
      path: `many/${folder}/procedure-${index}.rebuild`,
      text: renamed(ofFamily(procedure.text), procedureName, index),
    };
    return index % perFamily > 0
      ? [own]
      : [{ path: `many/${folder}/family.rebuild`, text: ofFamily(family.text) }, own];
  });
  return [...shared, ...files.flat()];
}

/** A procedure with so many repairs that are done once, each for a test of its own. */
export function oneTryRepairs(count: number): readonly WorkloadFile[] {
  const each = (of: (index: number) => string) => Array.from({ length: count }, (_, index) => of(index)).join('');
  const prove = block('stage prove').replace(
    / *test chatter /u,
    (chatter) =>
      `${each((index) => `    test look-${index} accept "sound" on fail again-${index} (once)\n`)}${chatter}`,
  );
  const text = oneSpring
    .replace(block('stage prove'), () => prove)
    .replace(
      '  repair clean-seat',
      (next) =>
        `${each((index) => `  repair again-${index} {\n    open\n    clean holes of nozzle\n    rinse nozzle, needle in cal-oil\n    close\n  }\n`)}${next}`,
    );
  return [...shared, libraryFile('one-spring/family.rebuild'), { path: repairsPath, text }];
}

/** Path of the procedure with many repairs. */
export const repairsPath = 'repairs.rebuild';

const oneSpring = libraryFile('one-spring/procedure.rebuild').text;

/** The lines of a block at the margin of stages, by its head. */
function block(head: string): string {
  const found = new RegExp(`^  ${head} [^]*?^  \\}\\n`, 'mu').exec(oneSpring);
  if (found === null) throw new Error(`The one-spring procedure has no ${head}.`);
  return found[0];
}

/** Stages without the lines of some of their steps. */
const without = (text: string, ...lines: readonly RegExp[]) =>
  lines.reduce((rest, line) => rest.replace(line, ''), text);

const firstRound = oneSpring.slice(0, oneSpring.indexOf('  stage prove'));
const lastRound = oneSpring.slice(oneSpring.indexOf('  stage prove'));
/**
 * What can be done over and over between the first build and the tests: taken apart, washed and built again. There is no gate in
 * it, since each would send the unit back to all before it, and the paths would be too many to follow.
 */
const round = [
  without(block('stage teardown'), / *discard .*\n/u, / *cap bore\n/u),
  without(block('stage clean'), / *uncap .*\n/u),
  block('stage last-wash'),
  without(block('stage build'), / *check needle .*\n *on fail .*\n/u),
];

/** Steps of a text as they are written: a line that is neither a clause nor a brace has one or more of them. */
const countSteps = (text: string) =>
  text
    .split('\n')
    .filter((line) => /^ {4,6}[a-z]/u.test(line) && !/^ +(?:on fail|reuse|with|only|across)\b/u.test(line)).length;

/** The one-spring procedure, washed, built and taken apart over and over, until its stages have so many steps. */
export function longProcedure(steps: number): readonly WorkloadFile[] {
  const stages: string[] = [];
  let left = steps - countSteps(oneSpring.slice(0, oneSpring.indexOf('  repair ')));
  for (let count = 1; left > 0; count++)
    for (const stage of round) {
      stages.push(stage.replace(/^ {2}stage (\S+)/u, `  stage $1-${count}`));
      left -= countSteps(stage);
    }
  return [
    ...shared,
    libraryFile('one-spring/family.rebuild'),
    { path: longPath, text: [firstRound, ...stages, lastRound].join('\n') },
  ];
}

/** Where a unit is built: the first step can be left out, and the finding is at the torque of the nut, some steps on. */
const place = /(?<=^ *)clamp body(?=\n *fit )/gmu;

/** The rule that reports it. */
export const slipRule = 'not-clamped';

/** Where the slip is made nearest to the middle of a text: the words that go, from offset to offset. */
export function slipIn(text: string): { readonly from: number; readonly to: number } {
  const distance = (at: number) => Math.abs(at - text.length / 2);
  const [nearest] = [...text.matchAll(place)].sort((one, other) => distance(one.index) - distance(other.index));
  if (nearest === undefined) throw new Error('There is no place for the slip in this text.');
  return { from: nearest.index, to: nearest.index + nearest[0].length };
}

/** The text with the slip. */
export function withSlip(text: string): string {
  const { from, to } = slipIn(text);
  return text.slice(0, from) + text.slice(to);
}

/** Whether the slip can be made in a text. */
const takesSlip = ({ text }: WorkloadFile) => text.search(place) >= 0;

/** The files with the slip in each procedure that takes it, but for the one that is edited; and the paths of these. */
export function withSlips(files: readonly WorkloadFile[]): {
  readonly files: readonly WorkloadFile[];
  readonly wrong: readonly string[];
} {
  const wrong = files.filter((file) => file.path !== editedPath && takesSlip(file)).map(({ path }) => path);
  return {
    files: files.map((file) => (wrong.includes(file.path) ? { ...file, text: withSlip(file.text) } : file)),
    wrong,
  };
}
