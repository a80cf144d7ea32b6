import type { CheckedProcedure } from '../../language/check.ts';
import { nearest } from '../../language/grammar/nearest.ts';
import { UsageError } from './usage-error.ts';
import { openWorkspace } from './workspace.ts';

/** The procedure of a name, or the first of a file. Throws a UsageError with the nearest names. */
export async function openProcedure(name: string, workspace: string): Promise<CheckedProcedure> {
  const { result } = await openWorkspace([workspace, ...(name.endsWith('.rebuild') ? [name] : [])], undefined);
  const found = result.procedures.find(({ procedure }) => procedure.name === name || procedure.source.file === name);
  if (found !== undefined) return found;
  const names = result.procedures.map(({ procedure }) => procedure.name);
  const near = nearest(name, names);
  throw new UsageError(
    `No procedure is called ${name}. ${near.length > 0 ? `Did you mean ${near.join(' or ')}?` : `There are: ${names.join(', ') || 'none'}.`}`,
  );
}
