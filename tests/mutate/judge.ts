import { type CheckResult, type SourceFile, Workspace } from '../../language/db/workspace.ts';
import { type Diagnostic, fullMessage } from '../../language/model/diagnostic.ts';
import { isEquivalent } from './equivalent.ts';
import { applied, type Mutant } from './mutant.ts';

export type Verdict = 'killed' | 'survived' | 'equivalent';

export interface Judged {
  readonly mutant: Mutant;
  readonly verdict: Verdict;
  readonly diagnostics: readonly Diagnostic[];
  /** A finding mentions something that is in the broken text, or is on its line. */
  readonly atPlace: boolean;
}

/** Judges the mutants of a workspace that checks clean. */
export class Judge {
  private readonly checker = new Workspace();
  private readonly files: readonly SourceFile[];
  private readonly sound: CheckResult;

  constructor(files: readonly SourceFile[]) {
    this.files = files;
    // A workspace of its own: its results are read after others have been checked.
    this.sound = new Workspace().check(files);
    if (this.sound.diagnostics.length > 0)
      throw new Error(
        `The text is not clean before it is broken:\n${this.sound.diagnostics.map((one) => `${one.source.file}:${one.source.range.start.line + 1} ${one.rule}: ${fullMessage(one)}`).join('\n')}`,
      );
  }

  judge(mutant: Mutant): Judged {
    const files = this.files.map((file) =>
      file.uri === mutant.file ? { uri: file.uri, text: applied(file.text, mutant.edits) } : file,
    );
    const broken = this.checker.check(files);
    const { diagnostics } = broken;
    const verdict =
      diagnostics.length > 0
        ? 'killed'
        : mutant.kind !== 'drop a fact of the family' && isEquivalent(this.sound, broken)
          ? 'equivalent'
          : 'survived';
    return {
      mutant,
      verdict,
      diagnostics,
      atPlace: diagnostics.some((diagnostic) => speaksOf(diagnostic, mutant, files)),
    };
  }
}

/** Whether a finding points at what was broken: by its line, a related line, or a name. */
function speaksOf(diagnostic: Diagnostic, mutant: Mutant, files: readonly SourceFile[]): boolean {
  const places = [diagnostic.source, ...(diagnostic.related ?? []).map(({ source }) => source)];
  if (places.some(({ file, range }) => file === mutant.file && Math.abs(range.start.line + 1 - mutant.line) <= 1))
    return true;
  const text = [
    fullMessage(diagnostic),
    ...places.map(({ file, range }) => files.find(({ uri }) => uri === file)?.text.split('\n')[range.start.line] ?? ''),
  ].join(' ');
  return mutant.names.some((name) => name.length > 2 && text.includes(name));
}
