import type { CheckedProcedure, CheckResult } from '../../language/db/workspace.ts';
import { shownPath } from '../host/files/find-files.ts';
import { named } from './named.ts';
import { openQuietly } from './workspace.ts';

/** The procedure of a name, or the first of a file, with the check of all around it. Throws a UsageError with the nearest names. */
export async function openProcedure(
  name: string,
  workspace: string,
): Promise<{ readonly found: CheckedProcedure; readonly result: CheckResult }> {
  const { result } = await openQuietly([workspace, ...(name.endsWith('.rebuild') ? [name] : [])]);
  const path = name.endsWith('.rebuild') ? shownPath(name) : name;
  const found = result.procedureOf(path) ?? named('procedure', name, result.procedures, ({ procedure }) => procedure);
  return { found, result };
}
