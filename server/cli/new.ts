import { existsSync } from 'node:fs';
import { join } from 'node:path';
import type { CheckResult } from '../../language/db/workspace.ts';
import { blank } from '../../language/drafting/blank.ts';
import { draftFamily } from '../../language/drafting/family.ts';
import { type FamilyChoice, familyChoices, writeFirstProcedure } from '../../language/ide/first-procedure.ts';
import { findStarters } from '../../language/ide/starters.ts';
import { kindWords } from '../../language/syntax/keywords.ts';
import { nearest } from '../../language/syntax/nearest.ts';
import { sampleFiles } from '../host/files/samples.ts';
import { WriteError, writeWhole } from '../host/print/write.ts';
import { worded, words } from './messages.ts';
import { listOf, meant, thereAre } from './near.ts';
import { say } from './say.ts';
import { UsageError } from './usage-error.ts';
import { openWorkspace } from './workspace.ts';

export interface NewProcedureOptions {
  readonly name: string | undefined;
  readonly title: string;
  /** Tests that give a figure, as `opening=pressure`. */
  readonly reads: readonly string[];
  readonly to: string | undefined;
  readonly workspace: string;
}

/** Lists the families that a procedure can begin from. */
export function newCommand(what: string | undefined): number {
  if (what !== undefined) {
    const near = nearest(what, ['procedure', 'family', 'job', 'samples']);
    throw new UsageError(
      worded`“${what}” is nothing that can be begun: write new procedure, new family, new job or new samples. ${meant(near, '')}`,
    );
  }
  const starters = findStarters(sampleFiles());
  const width = Math.max(...starters.map(({ family }) => family.name.length));
  say(`${worded`Families that come with the program, to begin from:`}\n\n`);
  for (const { family } of starters) say(`  ${family.name.padEnd(width)}  ${family.title}\n`);
  say(
    `\n${worded`npx handtight new procedure FAMILY   writes a first procedure for one of these, or for a family of this folder\nnpx handtight new family NAME --parts body,spring,plug   writes a family of your own\nnpx handtight new job NUMBER --of PROCEDURE --units 6   writes the job of an order that has come in\nnpx handtight new samples FOLDER     copies all of them, with their procedures and jobs`}\n`,
  );
  return 0;
}

/**
 * Writes a first procedure for a family of the workspace, or for one that comes with the program: then with that family, and
 * with its shop where the workspace has none. Overwrites nothing.
 */
export async function newProcedureCommand(name: string, options: NewProcedureOptions): Promise<number> {
  const workspace = await workspaceAt(options.workspace);
  const starters = findStarters(sampleFiles());
  const choices = familyChoices(workspace, starters);
  const family = choices.find((one) => one.name === name);
  const procedure = options.name ?? `rebuild-${name}`;
  const reads = options.reads.length === 0 || family === undefined ? null : readsAsked(family, options.reads);
  const text = writeFirstProcedure(workspace, starters, {
    family: name,
    name: procedure,
    title: options.title,
    reads,
    tell: words,
  });
  if (text === null) {
    const names = choices.map((one) => one.name);
    const near = nearest(name, names);
    throw new UsageError(
      worded`No family is called ${name}. ${meant(near, thereAre(names))} To write one of your own: npx handtight new family ${name} --parts body,spring,plug`,
    );
  }
  return written(options.to ?? join(options.workspace, `${procedure}.rebuild`), text);
}

/** Writes a first family from the names of its parts. */
export function newFamilyCommand(
  name: string,
  options: {
    readonly title: string;
    readonly parts: readonly string[];
    readonly tests: readonly string[];
    readonly to: string | undefined;
  },
): number {
  if (options.parts.length < 2)
    throw new UsageError(
      worded`A family has at least two parts. Name them in the order in which they are built: --parts body,spring,plug`,
    );
  return written(options.to ?? `${name}.rebuild`, draftFamily({ ...options, name, tell: words }));
}

/** Copies the library that comes with the program into a folder that has none of its files yet. */
export function newSamplesCommand(folder: string): number {
  const files = sampleFiles();
  const there = files.find(({ uri }) => existsSync(join(folder, uri)));
  if (there !== undefined)
    throw new UsageError(
      worded`${join(folder, there.uri)} is there already. Name a new folder: nothing is overwritten.`,
    );
  for (const { uri, text } of files) write(join(folder, uri), text);
  say(`${worded`Copied ${files.length} files into ${folder}. Check them: npx handtight check ${folder}`}\n`);
  return 0;
}

async function workspaceAt(folder: string): Promise<CheckResult | null> {
  try {
    return (await openWorkspace([folder], undefined)).result;
  } catch (error) {
    // A folder with nothing in it yet is where one begins.
    if (error instanceof UsageError && existsSync(folder)) return null;
    throw error;
  }
}

/** Tests that give a figure, as requested. */
function readsAsked({ name, tests }: FamilyChoice, asked: readonly string[]): ReadonlyMap<string, string> {
  const names = tests.map((test) => test.name);
  return new Map(
    asked.map((one): [string, string] => {
      const [test = '', kind = ''] = one.split('=');
      if (!names.includes(test))
        throw new UsageError(worded`${name} is not proven by ${test}. Its tests: ${listOf(names)}.`);
      if (!kindWords.includes(kind))
        throw new UsageError(
          worded`${kind || one} is no kind of figure. Write it as ${test}=pressure. Kinds: ${kindWords.join(', ')}.`,
        );
      return [test, kind];
    }),
  );
}

/** Writes what has been begun, and says how many blanks are left. */
export function written(file: string, text: string): number {
  if (existsSync(file))
    throw new UsageError(worded`${file} is there already. Give another file with --to: nothing is overwritten.`);
  write(file, text);
  const count = text.split(blank).length - 1;
  const blanks =
    count === 1
      ? worded`It has a blank (${blank}) for you to fill in.`
      : worded`It has ${count} blanks (${blank}) for you to fill in.`;
  const left = count === 0 ? '' : `${blanks} `;
  say(`${worded`Wrote ${file}.`} ${left}${worded`To see what is left: npx handtight check ${file}`}\n`);
  return 0;
}

function write(file: string, text: string): void {
  try {
    writeWhole(file, text);
  } catch (error) {
    throw error instanceof WriteError ? new UsageError(words(error.said)) : error;
  }
}
