import { type CheckResult, checkFiles, type SourceFile } from '../db/workspace.ts';

/** A workspace as it was checked: what every question of an editor is answered from. */
export interface Snapshot {
  readonly result: CheckResult;
  /** Text of a file; null: there is none. */
  readonly textOf: (file: string) => string | null;
}

/** Checks files, and answers questions about them. */
export function snapshotOf(files: readonly SourceFile[]): Snapshot {
  const texts = new Map(files.map(({ uri, text }) => [uri, text]));
  return { result: checkFiles(files), textOf: (file) => texts.get(file) ?? null };
}
