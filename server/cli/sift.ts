import type { CheckResult } from '../../language/db/workspace.ts';
import type { Diagnostic } from '../../language/model/diagnostic.ts';
import { fileKey, fileName } from '../host/print/file-name.ts';
import { sheetNames } from '../host/print/sheet-name.ts';
import { findingsOn } from './bearing.ts';
import { worded } from './messages.ts';
import type { Target } from './targets.ts';

/** A target that may be printed. */
export interface Ready extends Target {
  readonly diagnostics: readonly Diagnostic[];
}

export interface Sifted {
  readonly ready: readonly Ready[];
  /** Why the others are not printed. */
  readonly refused: readonly string[];
}

export interface SiftOptions {
  readonly draft: boolean;
  /** Each goes into a file of its own, which no other may take. */
  readonly ownFiles: boolean;
}

/** Parts what is printed from what has errors, or would take the file of another. */
export function sift(targets: readonly Target[], result: CheckResult, { draft, ownFiles }: SiftOptions): Sifted {
  const ready: Ready[] = [];
  const refused: string[] = [];
  const nameOf = sheetNames(result);
  const taken = new Map<string, Target>();
  for (const target of targets) {
    const diagnostics = findingsOn(target, result);
    const errors = diagnostics.filter(({ severity }) => severity === 'error').length;
    if (errors > 0 && !draft) {
      const [called, file] = [calledIn(target), fileOf(diagnostics, target)];
      refused.push(
        errors === 1
          ? worded`${called} is not printed: it has 1 error. Run npx handtight check ${file} to see it, or print it with --draft, which marks every page.`
          : worded`${called} is not printed: it has ${errors} errors. Run npx handtight check ${file} to see them, or print it with --draft, which marks every page.`,
      );
      continue;
    }
    const name = nameOf(target, draft);
    // Two of one name, as drafts: what is declared twice has an error.
    const key = fileKey(name);
    const first = ownFiles ? taken.get(key) : undefined;
    if (first !== undefined) {
      refused.push(
        worded`${calledIn(target)} (${(target.job ?? target.procedure).source.file}) is not printed: its file ${fileName(name)} would be that of ${calledIn(first)} (${(first.job ?? first.procedure).source.file}). Print it alone into another folder with --to, or all into one file with --one-file.`,
      );
      continue;
    }
    taken.set(key, target);
    ready.push({ ...target, diagnostics });
  }
  return { ready, refused };
}

/** What a target is called in messages. */
export function calledIn({ procedure, job }: Target): string {
  return job === null ? procedure.name : worded`job ${job.name}`;
}

/** The one file that the errors are in: of the job, the settings, the procedure; where there are several, the procedure's. */
function fileOf(diagnostics: readonly Diagnostic[], { procedure }: Target): string {
  const files = new Set(diagnostics.filter(({ severity }) => severity === 'error').map(({ source }) => source.file));
  const [only] = files;
  return files.size === 1 && only !== undefined ? only : procedure.source.file;
}
