import { withSeverities } from '../../config/config.ts';
import { issuedAndEdited } from '../../diagnostics/areas/traceability/issued-and-edited.ts';
import { issuedFileChanged } from '../../diagnostics/areas/traceability/issued-file-changed.ts';
import { type Diagnostic, stated } from '../../model/diagnostic.ts';
import type { Procedure } from '../../model/procedure.ts';
import { say } from '../../say/say.ts';
import { type IssuedFile, type IssuedSettings, issuedFileName } from './format.ts';

/** What two procedures are not made of alike, by kind and name. */
export function differing(one: ReadonlyMap<string, string>, other: ReadonlyMap<string, string>): string[] {
  return [...new Set([...one.keys(), ...other.keys()])].filter((what) => one.get(what) !== other.get(what));
}

/** A source that says the revision that was issued, and is not what was issued. */
export function editedFinding(
  { name, source }: Procedure,
  { procedure, revision, issuedOn }: IssuedFile,
  what: readonly string[],
): Diagnostic {
  return {
    rule: issuedAndEdited.code,
    severity: issuedAndEdited.severity,
    ...stated({
      message: say`Revision ${revision} of ${name} is issued, and its text is no longer what was issued.`,
      why: say`${what.join(', ')} changed since ${issuedOn}. A sheet that is printed now would say revision ${revision} and show other work than the sheets on the bench.`,
      help: say`Give the procedure the next revision, have it approved, and issue that: npx handtight issue ${name}. Or take the change back: ${issuedFileName(procedure, revision)} has the text that was issued.`,
    }),
    source,
  };
}

export function damagedFinding(file: string): Diagnostic {
  const start = { line: 0, character: 0 };
  return {
    rule: issuedFileChanged.code,
    severity: issuedFileChanged.severity,
    ...stated({
      message: say`This file of an issued revision is not as it was written, so no job is judged by it.`,
      why: say`a limit could be moved in it after the work was done.`,
      help: say`Take it back from version control or from a backup. What an issued revision says is changed by a new revision only.`,
    }),
    source: { file, range: { start, end: start } },
  };
}

/** Findings with the severities that were in force when what they are judged by was issued. */
export function settled(
  diagnostics: readonly Diagnostic[],
  severitiesOf: (declaration: string) => IssuedSettings['severities'] | null,
): readonly Diagnostic[] {
  return diagnostics.flatMap((one): readonly Diagnostic[] => {
    const severities = severitiesOf(one.source.file);
    if (severities === null) return [one];
    return withSeverities([one], new Map(severities)).map((stated) => ({ ...stated, isSettled: true }));
  });
}
