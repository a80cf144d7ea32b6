import { type CheckResult, checkFiles, type SourceFile } from '../db/workspace.ts';
import type { Diagnostic } from '../model/diagnostic.ts';

/** A workspace as it was checked: what every question of an editor is answered from. */
export interface Snapshot {
  readonly result: CheckResult;
  /** What is found in a file, whatever file it comes of. */
  readonly findingsIn: (file: string) => readonly Diagnostic[];
  /** Text of a file; null: there is none. */
  readonly textOf: (file: string) => string | null;
}

/** Checks files, and answers questions about them. */
export function snapshotOf(files: readonly SourceFile[]): Snapshot {
  const texts = new Map(files.map(({ uri, text }) => [uri, text]));
  const result = checkFiles(files);
  const findingsIn = (file: string) => result.diagnostics.filter(({ source }) => source.file === file);
  return { result, findingsIn, textOf: (file) => texts.get(file) ?? null };
}
